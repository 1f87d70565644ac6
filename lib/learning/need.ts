import type { Family } from './family';
import type { Trial } from './mastery';
import { chanceOfRight, GUESS, harderAt } from './skill';
import { type FamilyStanding, REFERENCE_DIFFICULTY, type Standing } from './standing';

/** The share of right answers to practise at. Most is learnt near 85 % (Wilson and others, Nature Communications 10, 2019); ours is a little lower. */
export const AIM = 0.8;
/** A family this well read, on walls that are easy to see, makes room for the next one. */
const WELL_READ = 0.7;
/** So many walls in a row read rightly are enough, whatever came before. */
const ROW = 3;
const FEWEST = 2;

/** Whether a family is not read well yet: by the rating, unless the last walls were all read rightly; or because sound walls are not left alone. */
export function needsWork({ family, faulty, sound }: FamilyStanding, standing: Standing): boolean {
  if (faulty.length < FEWEST || callsOnSound(sound)) return true;
  const last = faulty.slice(-ROW);
  const inARow = last.length === ROW && areRight(last);
  return !inARow && chanceAt(standing, family, REFERENCE_DIFFICULTY) < AIM;
}

/** Whether something was called on one of the last sound walls. */
export function callsOnSound(sound: readonly Trial[]): boolean {
  return sound.length >= FEWEST && !areRight(sound.slice(-ROW));
}

export function areRight(trials: readonly Trial[]): boolean {
  return trials.every(({ right }) => right);
}

/** The chance of reading a wall of the family rightly at a difficulty. */
export function chanceAt({ skill }: Standing, family: Family, difficulty: number): number {
  return chanceOfRight(skill, { family, harder: harderAt(difficulty), guess: GUESS });
}

export function isWell(standing: Standing, family: Family): boolean {
  return chanceAt(standing, family, 1) >= WELL_READ;
}

const ENOUGH_WALLS = 4;
/** So much less often, as a share. */
const MUCH_LESS = 0.2;

/** Whether other faults are found much less often once one is found than a fault that is alone on its wall. */
export function stopsAfterFirst({ others, single }: Standing): boolean {
  if (others.walls < ENOUGH_WALLS || single.walls < ENOUGH_WALLS) return false;
  return others.found / others.faults + MUCH_LESS < single.found / single.walls;
}
