import { MarkingError, requireCount } from '../../marking/marking-error';
import type { Tally } from './wall-answer';

/** Answers of one learner to questions of one difficulty (logits). */
export interface Attempted extends Tally {
  readonly difficulty: number;
}

/** In logits: at 0 a learner gets half of the questions of difficulty 0 right. */
export interface Ability {
  readonly ability: number;
  readonly standardError: number;
}

/**
 * Ability of one learner on the Rasch scale, P(right) = 1 / (1 + exp(difficulty - ability)): the most likely value with
 * a standard normal prior, and its standard error 1 / sqrt(information + 1). Without answers 0 and 1, the prior itself.
 * Throws MarkingError for tallies that are not whole or got > of.
 */
export function abilityOf(answers: readonly Attempted[]): Ability {
  answers.forEach((answer, index) => {
    requireTally(`answers.${index}`, answer);
  });
  let ability = 0;
  let information = 1;
  // Newton's steps on a function with one top; half steps are never needed with this prior.
  for (let step = 0; step < 50; step++) {
    let slope = -ability;
    information = 1;
    for (const { difficulty, got, of } of answers) {
      const p = chanceRight(ability, difficulty);
      slope += got - of * p;
      information += of * p * (1 - p);
    }
    const move = slope / information;
    ability += Math.max(-1, Math.min(1, move));
    if (Math.abs(move) < 1e-12) break;
  }
  return { ability, standardError: 1 / Math.sqrt(information) };
}

export function chanceRight(ability: number, difficulty: number): number {
  return 1 / (1 + Math.exp(difficulty - ability));
}

/** Grid on which the abilities of a group are summed, logits. */
const NODES = Array.from({ length: 49 }, (_, i) => (i - 24) / 4);

export interface Calibrated {
  /** Of each question, in the order of the columns, logits. */
  readonly difficulties: readonly number[];
  /** Of all answers, the abilities summed out. */
  readonly logLikelihood: number;
}

/**
 * Difficulties of questions from a group's answers (rows learners, columns questions; `of` 0 where a learner met none):
 * marginal maximum likelihood with standard normal abilities, by the EM steps of Bock and Aitkin (1981). `priorVariance`
 * draws a difficulty towards 0, which keeps a question that all got right finite; Infinity is plain likelihood.
 * Throws MarkingError for rows of unequal length and bad tallies.
 */
export function calibrate(rows: readonly (readonly Tally[])[], priorVariance: number): Calibrated {
  const width = rows[0]?.length ?? 0;
  rows.forEach((row, r) => {
    if (row.length !== width)
      throw new MarkingError(`rows.${r}: ${row.length} questions in a table of ${width}`);
    row.forEach((tally, c) => {
      requireTally(`rows.${r}.${c}`, tally);
    });
  });
  let difficulties: readonly number[] = new Array<number>(width).fill(0);
  let logLikelihood = 0;
  for (let round = 0; round < 500; round++) {
    const expected = expectedCounts(rows, difficulties);
    logLikelihood = expected.logLikelihood;
    const next = difficulties.map((from, c) =>
      difficultyFrom(from, expected.right[c] ?? [], expected.all[c] ?? [], priorVariance),
    );
    const move = Math.max(0, ...next.map((value, c) => Math.abs(value - (difficulties[c] ?? 0))));
    difficulties = next;
    if (move < 1e-7) break;
  }
  return { difficulties, logLikelihood };
}

/** For each question and node: answers expected of learners of that ability, and how many of them right. */
function expectedCounts(rows: readonly (readonly Tally[])[], difficulties: readonly number[]) {
  const weights = NODES.map((node) => Math.exp((-node * node) / 2));
  const weightSum = weights.reduce((sum, weight) => sum + weight, 0);
  const right = difficulties.map(() => new Array<number>(NODES.length).fill(0));
  const all = difficulties.map(() => new Array<number>(NODES.length).fill(0));
  const logRight = difficulties.map((b) => NODES.map((node) => -Math.log1p(Math.exp(b - node))));
  const logWrong = difficulties.map((b) => NODES.map((node) => -Math.log1p(Math.exp(node - b))));
  let logLikelihood = 0;
  for (const row of rows) {
    const logs = NODES.map((_, n) =>
      row.reduce(
        (sum, { got, of }, c) => sum + got * (logRight[c]?.[n] ?? 0) + (of - got) * (logWrong[c]?.[n] ?? 0),
        0,
      ),
    );
    const top = Math.max(...logs);
    const masses = logs.map((log, n) => Math.exp(log - top) * (weights[n] ?? 0));
    const mass = masses.reduce((sum, each) => sum + each, 0);
    logLikelihood += top + Math.log(mass / weightSum);
    row.forEach(({ got, of }, c) => {
      if (of === 0) return;
      masses.forEach((each, n) => {
        const share = each / mass;
        addAt(right[c], n, share * got);
        addAt(all[c], n, share * of);
      });
    });
  }
  return { right, all, logLikelihood };
}

function addAt(list: number[] | undefined, at: number, amount: number): void {
  if (list) list[at] = (list[at] ?? 0) + amount;
}

function difficultyFrom(
  from: number,
  right: readonly number[],
  all: readonly number[],
  priorVariance: number,
): number {
  let difficulty = from;
  for (let step = 0; step < 20; step++) {
    let slope = -difficulty / priorVariance;
    let information = 1 / priorVariance;
    NODES.forEach((node, n) => {
      const p = chanceRight(node, difficulty);
      slope += (all[n] ?? 0) * p - (right[n] ?? 0);
      information += (all[n] ?? 0) * p * (1 - p);
    });
    if (information === 0) return difficulty;
    const move = Math.max(-1, Math.min(1, slope / information));
    difficulty += move;
    if (Math.abs(move) < 1e-10) break;
  }
  return difficulty;
}

function requireTally(where: string, { got, of }: Tally): void {
  requireCount(`${where}.got`, got);
  requireCount(`${where}.of`, of);
  if (got > of) throw new MarkingError(`${where}: ${got} right of only ${of}`);
}
