import { cohenKappa, verdictTable } from '../../marking/agreement';
import { type Calibration, calibrationOf, type SureAnswer } from '../../marking/confidence';
import { type SoundOrFaulty, soundOrFaulty } from '../../marking/sound-or-faulty';
import { countVerdicts, type VerdictCounts } from '../../marking/verdict-counts';
import type { Step, Tally, WallAnswer } from './wall-answer';
import { tallySteps } from './wall-answer';

/** A mark made with certainty that was false or named wrongly. */
export interface CertainButWrong {
  readonly learner: string;
  readonly work: string;
  readonly place: number;
  /** What was said. */
  readonly said: string;
  /** What was there; null for nothing. */
  readonly truth: string | null;
}

/** What many wall answers come to: of one learner, or of a group. */
export interface Figures {
  readonly walls: number;
  /** Mean wall score, 0 to 1; null without walls. */
  readonly score: number | null;
  readonly steps: Readonly<Record<Step, Tally | null>>;
  readonly falseMarks: number;
  readonly certainButWrong: readonly CertainButWrong[];
  /** Of the walls that were answered. */
  readonly verdicts: VerdictCounts;
  /** d' and its like; null until a sound and a faulty wall were judged. */
  readonly soundOrFaulty: SoundOrFaulty | null;
  /** Cohen's kappa of the answers "sound or faulty" with the truth; null where chance alone agrees. */
  readonly kappa: number | null;
  /** How well certainty fits; null without marks. */
  readonly calibration: Calibration | null;
}

export function figuresOf(answers: readonly WallAnswer[]): Figures {
  const verdicts = countVerdicts(
    answers
      .filter(({ answered }) => answered)
      .map(({ faults, saysSound }) => ({ faulty: faults.length > 0, saidFaulty: !saysSound })),
  );
  const { hits, misses, falseAlarms, soundCalls } = verdicts;
  const bothKinds = hits + misses > 0 && falseAlarms + soundCalls > 0;
  const sure = answers.flatMap(sureAnswers);
  return {
    walls: answers.length,
    score: answers.length === 0 ? null : answers.reduce((sum, { score }) => sum + score, 0) / answers.length,
    steps: tallySteps(answers),
    falseMarks: answers.reduce((sum, { falseMarks }) => sum + falseMarks.length, 0),
    certainButWrong: answers.flatMap(certainButWrong),
    verdicts,
    soundOrFaulty: bothKinds ? soundOrFaulty(verdicts) : null,
    kappa: answers.length === 0 ? null : cohenKappa(verdictTable(verdicts)),
    calibration: sure.length === 0 ? null : calibrationOf(sure),
  };
}

/** Every mark that said something: right when the place and the name are. */
function sureAnswers({ faults, falseMarks }: WallAnswer): readonly SureAnswer[] {
  return [
    ...faults.flatMap(({ fault, named, sure }) =>
      named === null || sure === null ? [] : { sure, right: named === fault },
    ),
    ...falseMarks.map(({ sure }) => ({ sure, right: false })),
  ];
}

function certainButWrong({
  learner,
  work,
  place,
  faults,
  falseMarks,
}: WallAnswer): readonly CertainButWrong[] {
  const at = { learner, work, place };
  return [
    ...faults.flatMap(({ fault, named, sure }) =>
      sure === 3 && named !== null && named !== fault ? { ...at, said: named, truth: fault } : [],
    ),
    ...falseMarks.flatMap(({ fault, sure }) => (sure === 3 ? { ...at, said: fault, truth: null } : [])),
  ];
}
