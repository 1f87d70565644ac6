import type { Family } from './family';

/**
 * How well a learner reads walls, on the scale of log odds: a skill, an offset for each family of faults, and how hard each family is.
 * p = c + (1 - c) / (1 + e^-(skill + offset - difficulty - r)), with the guess floor c of the task and the difficulty r of the wall.
 * After an answer y: skill += .6 (y - p) / (1 + .05 n), offset += .8 (y - p) / (1 + .05 n), difficulty -= .5 (y - p) / (1 + .05 n), with
 * the answers n so far to all, to the family, to the family. Form after R. Pelánek, Computers & Education 98 (2016) 169-179; the
 * three gains are defaults of ours.
 */
export interface Skill {
  readonly skill: number;
  readonly answers: number;
  readonly families: Readonly<Partial<Record<Family, FamilySkill>>>;
}

export interface FamilySkill {
  readonly offset: number;
  readonly difficulty: number;
  readonly answers: number;
}

/** What was answered: a wall of a family, how much harder it is than a usual one, and how often a guess is right. */
export interface Task {
  readonly family: Family;
  readonly harder: number;
  readonly guess: number;
}

const GAINS = { skill: 0.6, offset: 0.8, difficulty: 0.5 } as const;
const SLOWING = 0.05;
/** A family that nobody has answered yet is taken to be a little easy. */
const FIRST_DIFFICULTY = -0.3;

export const NO_ANSWERS: Skill = { skill: 0, answers: 0, families: {} };

export function familySkill(of: Skill, family: Family): FamilySkill {
  return of.families[family] ?? { offset: 0, difficulty: FIRST_DIFFICULTY, answers: 0 };
}

/** The chance of a right answer, 0 to 1. */
export function chanceOfRight(of: Skill, { family, harder, guess }: Task): number {
  const { offset, difficulty } = familySkill(of, family);
  return guess + (1 - guess) / (1 + Math.exp(-(of.skill + offset - difficulty - harder)));
}

export function afterAnswer(of: Skill, task: Task, right: boolean): Skill {
  const before = familySkill(of, task.family);
  const error = Number(right) - chanceOfRight(of, task);
  const byFamily = error / (1 + SLOWING * before.answers);
  return {
    skill: of.skill + (GAINS.skill * error) / (1 + SLOWING * of.answers),
    answers: of.answers + 1,
    families: {
      ...of.families,
      [task.family]: {
        offset: before.offset + GAINS.offset * byFamily,
        difficulty: before.difficulty - GAINS.difficulty * byFamily,
        answers: before.answers + 1,
      },
    },
  };
}

/**
 * How much harder a wall of each difficulty, 1 to 5, is than one of the middle: less by one for each doubling of how far a fault is beyond
 * its limit, more by .3 for each look-alike, by the means of what the generator draws. A first guess of ours, until walls are tried.
 */
const HARDER: readonly number[] = [-1.37, -0.72, 0, 0.7, 1.23];

export function harderAt(difficulty: number): number {
  return HARDER[difficulty - 1] ?? 0;
}

/** How often a place and a name guessed at on a whole wall are right. */
export const GUESS = 0.05;
