import type { Mm } from '../units';
import { refuseNegative, refuseNotPositive } from './refusals';

/** Lengths of the cut pieces of a unit, such that they and their joints make up whole units. mm. */
export interface Pieces {
  readonly half: Mm;
  readonly third: Mm;
  readonly twoThirds: Mm;
  readonly quarter: Mm;
  readonly threeQuarter: Mm;
}

/** From a head joint to the nearest one in the course below, mm. */
export interface BondOffsets {
  readonly half: Mm;
  readonly third: Mm;
  readonly quarter: Mm;
}

/**
 * The cut pieces of a unit of length L at head joint j: half (L − j)/2, third (L − 2j)/3, two thirds 2·third + j, quarter (L − 3j)/4,
 * three quarters 3·quarter + 2j. Bond arithmetic: the pieces and the joints between them give L again.
 * @throws RangeError on senseless numbers, or when the joints leave nothing of a quarter.
 */
export function piecesOf(length: Mm, joint: Mm): Pieces {
  refuseUnit(length, joint);
  const third = (length - 2 * joint) / 3;
  const quarter = (length - 3 * joint) / 4;
  if (quarter <= 0) {
    throw new RangeError(`joint: three of ${joint} mm leave nothing of ${length} mm to quarter`);
  }
  return {
    half: (length - joint) / 2,
    third,
    twoThirds: 2 * third + joint,
    quarter,
    threeQuarter: 3 * quarter + 2 * joint,
  };
}

/** Offsets of half, third and quarter bond: (L + j)/2, (L + j)/3, (L + j)/4. @throws RangeError on senseless numbers. */
export function bondOffsetsOf(length: Mm, joint: Mm): BondOffsets {
  refuseUnit(length, joint);
  const step = length + joint;
  return { half: step / 2, third: step / 3, quarter: step / 4 };
}

/**
 * The head joint that lays these pieces in a course with free ends, mm: (W − Σ pieces) ÷ (pieces − 1). Whether it is a good joint is
 * for the limits to say; 0 belongs.
 * @throws RangeError for fewer than two pieces, a piece or wall not above zero, or pieces longer than the wall.
 */
export function headJointFor(wallLength: Mm, pieces: readonly Mm[]): Mm {
  refuseNotPositive('wall length', wallLength);
  if (pieces.length < 2) throw new RangeError(`pieces: ${pieces.length} have no joint between them`);
  pieces.forEach((piece, index) => {
    refuseNotPositive(`pieces.${index}`, piece);
  });
  const sum = pieces.reduce((total, piece) => total + piece, 0);
  if (sum > wallLength) throw new RangeError(`pieces: ${sum} mm do not fit in ${wallLength} mm`);
  return (wallLength - sum) / (pieces.length - 1);
}

/** A pier, or a wall with two free ends: n(L + j) − j. `units` may step by the bond, as by halves. @throws RangeError on senseless numbers, or a pier of no length. */
export function pierLength(units: number, length: Mm, joint: Mm): Mm {
  const pier = returnLength(units, length, joint) - joint;
  refuseNotPositive('pier length', pier);
  return pier;
}

/** An opening, which has a joint at either side: n(L + j) + j. @throws RangeError on senseless numbers. */
export function openingWidth(units: number, length: Mm, joint: Mm): Mm {
  return returnLength(units, length, joint) + joint;
}

/** A wall from a return to an opening: n(L + j). @throws RangeError on senseless numbers. */
export function returnLength(units: number, length: Mm, joint: Mm): Mm {
  refuseNotPositive('units', units);
  refuseUnit(length, joint);
  return units * (length + joint);
}

/** `straight`: head joints stand above each other. `short`: they are nearer than asked. `enough`: at the least asked, or more. */
export type Lap = 'straight' | 'short' | 'enough';

/**
 * How a head joint laps the nearest one of the course below. The least is `share` of the unit's length or `least` mm, whichever is
 * more; codes ask a share of 1/4 (IRC R606.3.7.1 for running bond, NZS 4210). The least itself is enough.
 * @throws RangeError on senseless numbers, or a share above 1.
 */
export function lapOf(offset: Mm, length: Mm, share: number, least: Mm = 0): Lap {
  refuseNegative('offset', offset);
  refuseNotPositive('length', length);
  refuseNegative('share', share);
  if (share > 1) throw new RangeError(`share: ${share} is more than the whole unit`);
  refuseNegative('least', least);
  if (offset === 0) return 'straight';
  return offset >= Math.max(share * length, least) ? 'enough' : 'short';
}

function refuseUnit(length: Mm, joint: Mm): void {
  refuseNotPositive('length', length);
  refuseNegative('joint', joint);
}
