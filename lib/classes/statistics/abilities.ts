import { type Ability, abilityOf, calibrate } from './rasch';
import type { Tally, WallAnswer } from './wall-answer';

/** The question that a sound wall asks: is it left alone? */
export const SOUND_WALL = 'sound wall';

/** From so many answers a difficulty is shown. */
export const ENOUGH_FOR_DIFFICULTY = 30;
/** Standard normal, as for the abilities. */
const PRIOR_VARIANCE = 1;

export interface Difficulty {
  /** A fault, or SOUND_WALL. */
  readonly question: string;
  /** Logits; high is hard. */
  readonly difficulty: number;
  readonly answers: number;
}

export interface GroupScale {
  readonly difficulties: readonly Difficulty[];
  readonly abilityOf: (learner: string) => Ability;
}

/**
 * Puts a group on one Rasch scale: the questions are the faults (right: found and named) and the sound wall (right: no
 * mark), the difficulties are fitted to all answers, then each learner's ability to those. Never more than one
 * parameter a question: a class has too few answers for slopes.
 */
export function groupScale(answers: readonly WallAnswer[]): GroupScale {
  const byLearner = new Map<string, WallAnswer[]>();
  for (const answer of answers) {
    byLearner.set(answer.learner, [...(byLearner.get(answer.learner) ?? []), answer]);
  }
  const tallies = new Map([...byLearner].map(([learner, own]) => [learner, talliesOf(own)]));
  const questions = [...new Set([...tallies.values()].flatMap((own) => [...own.keys()]))].sort();
  const rows = [...tallies.values()].map((own) => questions.map((question) => own.get(question) ?? NONE));
  const { difficulties } = calibrate(rows, PRIOR_VARIANCE);
  return {
    difficulties: questions.map((question, q) => ({
      question,
      difficulty: difficulties[q] ?? 0,
      answers: rows.reduce((sum, row) => sum + (row[q]?.of ?? 0), 0),
    })),
    abilityOf: (learner) => {
      const own = tallies.get(learner);
      return abilityOf(
        questions.flatMap((question, q) => {
          const tally = own?.get(question);
          return tally ? { ...tally, difficulty: difficulties[q] ?? 0 } : [];
        }),
      );
    },
  };
}

const NONE: Tally = { got: 0, of: 0 };

function talliesOf(answers: readonly WallAnswer[]): ReadonlyMap<string, Tally> {
  const tallies = new Map<string, Tally>();
  const add = (question: string, right: boolean) => {
    const { got, of } = tallies.get(question) ?? NONE;
    tallies.set(question, { got: got + (right ? 1 : 0), of: of + 1 });
  };
  for (const { faults, falseMarks, answered } of answers) {
    for (const { fault, named } of faults) add(fault, named === fault);
    if (faults.length === 0 && answered) add(SOUND_WALL, falseMarks.length === 0);
  }
  return tallies;
}
