import { munkres } from 'munkres';
import { MarkingError } from './marking-error';
import { FARTHEST } from './place';

/** A group of marks that can mean a finding, and what pairing the two would be worth. */
export interface Option {
  readonly group: number;
  readonly finding: number;
  /** The mark names the finding's fault. */
  readonly rightName: boolean;
  /** Whole steps, 0 to FARTHEST. */
  readonly distance: number;
}

/** What finding this one at all is worth; used only between pairings that are otherwise equal. */
export interface Stake {
  readonly couldFall: boolean;
  /** Whole number, 1 to MOST_VALUE. */
  readonly value: number;
}

/** Twice the greatest hazard weight: a finding both found and named. */
export const MOST_VALUE = 6;

/** Above this many pairs the weights would leave the integers that a number holds exactly. */
export const MOST_PAIRS = 100;

/**
 * Pairs groups with findings one to one: most pairs first, then most right names, then the least sum of
 * distances. What is still equal is settled by what is found (most that could fall, then most value), so that
 * the score does not hang on the order of marks or on left and right.
 *
 * Returns the group of each finding, or null. The five aims are the digits of one whole number whose places
 * are wide enough that no digit can carry, so one assignment (munkres) solves them in that order, exactly.
 * Throws MarkingError above MOST_PAIRS.
 */
export function assign(
  groupCount: number,
  stakes: readonly Stake[],
  options: readonly Option[],
): readonly (number | null)[] {
  const chosen: (number | null)[] = stakes.map(() => null);
  // Only rows and columns with an option enter the table; most marks and findings have one or none.
  const rows = [...new Set(options.map((option) => option.group))].sort((a, b) => a - b);
  const columns = [...new Set(options.map((option) => option.finding))].sort((a, b) => a - b);
  const pairs = Math.min(rows.length, columns.length);
  if (pairs === 0) return chosen;
  if (pairs > MOST_PAIRS) {
    throw new MarkingError(
      `marks: more than ${MOST_PAIRS} faults found on one wall cannot be paired exactly`,
    );
  }
  const rowOf = positions(rows, groupCount);
  const columnOf = positions(columns, stakes.length);
  // An unpaired cell costs nothing; a pair costs less than nothing, the better the less.
  const costs = rows.map(() => columns.map(() => 0));
  for (const option of options) {
    const row = costs[rowOf[option.group] ?? -1];
    const stake = stakes[option.finding];
    const column = columnOf[option.finding];
    if (row && stake && column !== undefined) row[column] = -worth(option, stake, pairs);
  }
  for (const [row, column] of munkres(costs)) {
    const group = rows[row];
    const finding = columns[column];
    if (group !== undefined && finding !== undefined && costs[row]?.[column] !== 0) chosen[finding] = group;
  }
  return chosen;
}

/** Place of each entry of `sorted` under its own value; unused values keep -1. */
function positions(sorted: readonly number[], size: number): readonly number[] {
  const places = new Array<number>(size).fill(-1);
  sorted.forEach((value, place) => {
    places[value] = place;
  });
  return places;
}

/** Each digit's place value is one more than the most that `pairs` pairs can bring to the digits below it. */
function worth(option: Option, stake: Stake, pairs: number): number {
  const digits = [
    { digit: 1, most: 1 },
    { digit: option.rightName ? 1 : 0, most: 1 },
    { digit: FARTHEST - option.distance, most: FARTHEST },
    { digit: stake.couldFall ? 1 : 0, most: 1 },
    { digit: stake.value, most: MOST_VALUE },
  ];
  return digits.reduce((sum, { digit, most }) => sum * (pairs * most + 1) + digit, 0);
}
