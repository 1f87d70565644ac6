import type { Mm } from '../units';
import { headJointFor, piecesOf } from './bond';
import { refuseNotPositive } from './refusals';

/** What a course is to be set out with, mm. */
export interface SetOut {
  readonly wall: Mm;
  readonly unit: Mm;
  /** The head joint wished for. */
  readonly joint: Mm;
  readonly bond: Bond;
}

/** How far the head joints of one row stand from those of the next: its name says which cut pieces belong to it. */
export type Bond = 'half' | 'third' | 'quarter';

/** One way to fill a course with free ends. */
export interface Arrangement {
  readonly name: string;
  /** From the left, mm. */
  readonly pieces: readonly Mm[];
  readonly joint: Mm;
  readonly smallest: Mm;
}

/**
 * Ways to fill a course between free ends, best first: those with the largest smallest piece, and among these the joint nearest to the
 * wish. Tried: whole units; with a cut piece of the bond at the end; one piece cut to fit at the joint wished
 * for; the same cut shared between both ends. Whether joint and piece are good, the limits say; ways whose joint would be
 * negative, or over three times the wish, are not listed. @throws RangeError on senseless numbers, or a wall shorter than two units.
 */
export function arrangementsOf({ wall, unit, joint, bond }: SetOut): readonly Arrangement[] {
  refuseNotPositive('wall', wall);
  refuseNotPositive('unit', unit);
  refuseNotPositive('joint', joint);
  if (wall < 2 * unit) throw new RangeError(`wall: ${wall} mm is shorter than two units`);
  const cuts = piecesOf(unit, joint);
  const byBond: Readonly<Record<Bond, readonly (readonly [string, Mm])[]>> = {
    half: [['half at the end', cuts.half]],
    third: [
      ['two-thirds at the end', cuts.twoThirds],
      ['third at the end', cuts.third],
    ],
    quarter: [
      ['three-quarter at the end', cuts.threeQuarter],
      ['quarter at the end', cuts.quarter],
    ],
  };
  const bonded: readonly (readonly [string, Mm | null])[] = [['whole units', null], ...byBond[bond]];
  const ways = bonded.flatMap(([name, cut]) =>
    countsFor(wall, unit, joint, cut ?? 0).map((count) =>
      arrangement(name, wall, [...new Array<Mm>(count).fill(unit), ...(cut === null ? [] : [cut])]),
    ),
  );
  return [...ways, ...cutToFit(wall, unit, joint)]
    .filter((way): way is Arrangement => way !== null && way.joint <= 3 * joint)
    .sort((a, b) => b.smallest - a.smallest || Math.abs(a.joint - joint) - Math.abs(b.joint - joint));
}

/**
 * The least distance between a head joint and one of the same row turned end for end, mm: what laying every second row so gives.
 * 0 is joint over joint. @throws RangeError for fewer than two pieces.
 */
export function leastLapTurned({ pieces, joint }: Pick<Arrangement, 'pieces' | 'joint'>): Mm {
  if (pieces.length < 2) throw new RangeError(`pieces: ${pieces.length} have no joint between them`);
  const joints = jointsOf(pieces, joint);
  const turned = jointsOf([...pieces].reverse(), joint);
  return Math.min(...joints.flatMap((x) => turned.map((other) => Math.abs(x - other))));
}

function jointsOf(pieces: readonly Mm[], joint: Mm): readonly Mm[] {
  let x = 0;
  return pieces.slice(0, -1).map((piece) => {
    x += piece + joint;
    return x - joint / 2;
  });
}

/** The whole number of units on either side of the exact one. */
function countsFor(wall: Mm, unit: Mm, joint: Mm, cut: Mm): readonly number[] {
  const exact = (wall + joint - (cut > 0 ? cut + joint : 0)) / (unit + joint);
  return [...new Set([Math.floor(exact), Math.ceil(exact)])].filter((count) => count >= 1);
}

/** As many whole units as fit at the joint wished for, and the rest as one cut, or as two equal cuts with one whole unit less. */
function cutToFit(wall: Mm, unit: Mm, joint: Mm): readonly (Arrangement | null)[] {
  const count = Math.floor((wall + joint) / (unit + joint));
  const rest = wall - count * (unit + joint);
  if (rest <= 0 || rest >= unit) return [];
  const whole = (units: number) => new Array<Mm>(units).fill(unit);
  const shared = (rest + unit) / 2;
  return [
    arrangement('one piece cut to fit', wall, [...whole(count), rest]),
    count > 1 ? arrangement('equal cuts at both ends', wall, [shared, ...whole(count - 1), shared]) : null,
  ];
}

function arrangement(name: string, wall: Mm, pieces: readonly Mm[]): Arrangement | null {
  const sum = pieces.reduce((total, piece) => total + piece, 0);
  if (pieces.length < 2 || sum > wall) return null;
  return { name, pieces, joint: headJointFor(wall, pieces), smallest: Math.min(...pieces) };
}
