import { type Card, createEmptyCard, fsrs, type Grade, Rating } from 'ts-fsrs';
import type { WallAttempt } from './attempt';
import { type Family, familyOf } from './family';

/** The longest time between two walls of a family, days. Cap of ours: the library may pass its own by a day. */
export const LONGEST_DAYS = 60;
const DAY = 86_400_000;

const scheduler = fsrs({
  request_retention: 0.9,
  maximum_interval: LONGEST_DAYS,
  enable_fuzz: false,
  enable_short_term: false,
});

/** When a family is to come back, and how it stands in the library's model of forgetting. One for each family of a learner. */
export interface Review {
  readonly card: Card;
  /** ms since 1970. */
  readonly lastAt: number;
  readonly dueAt: number;
  /** From the last wall to the next, days. */
  readonly days: number;
}

/** The next review after a wall read at that time. A clock set back counts as no time gone by. */
export function reviewed(before: Review | null, at: number, grade: Grade): Review {
  const now = before === null ? at : Math.max(at, before.lastAt);
  const { card } = scheduler.next(before?.card ?? createEmptyCard(now), now, grade);
  const days = Math.min(card.scheduled_days, LONGEST_DAYS);
  return { card, lastAt: now, dueAt: now + days * DAY, days };
}

/** How much of it is left, 0 to 1: an order to take due families in, and no more. It is never shown as a chance. */
export function leftOf({ card }: Review, now: number): number {
  return scheduler.get_retrievability(card, now, false);
}

const CERTAIN = 3;
const UNSURE = 1;
const MANY_FALSE_CALLS = 2;

/**
 * How a wall was read, for one family on it: missed or named wrongly → again; found but unsure, or with two false calls → hard; found and
 * named → good; found, named and certain, with no false call, faster than usual → easy. Null where the wall has no fault of the family.
 */
export function gradeOf(attempt: WallAttempt, family: Family, usualMs: number | null): Grade | null {
  const mine = attempt.faults.filter(({ fault }) => familyOf(fault) === family);
  if (mine.length === 0) return null;
  if (mine.some(({ outcome }) => outcome !== 'found')) return Rating.Again;
  const { falseCalls, spentMs } = attempt;
  if (falseCalls.length >= MANY_FALSE_CALLS || mine.some(({ sure }) => sure === UNSURE)) return Rating.Hard;
  const isFast = spentMs !== null && usualMs !== null && spentMs < usualMs;
  const isCertain = mine.every(({ sure }) => sure === CERTAIN);
  return isFast && isCertain && falseCalls.length === 0 ? Rating.Easy : Rating.Good;
}
