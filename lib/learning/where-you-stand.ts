import { medianOf } from '../geometry/interval';
import { type CheckId, HAZARDS, type Hazard } from '../inspect/finding';
import type { SureAnswer } from '../marking/confidence';
import { type ShareLimits, shareWithLimits } from '../marking/wilson';
import { isOfWall, type WallAttempt } from './attempt';
import type { Family } from './family';
import type { Trial } from './mastery';
import type { PracticeRecord } from './record';
import type { Standing } from './standing';

/** Walls after which there is something to tell: the first twenty are mostly noise (Pusic, Pecaric and Boutis 2011). */
export const ENOUGH_WALLS = 20;
/** A piece of the curve has so many walls at least, and there are so many pieces at most. */
const PIECE = 10;
const MOST_PIECES = 20;
/** What was read longer ago says little of how a reader stands now. */
const LATEST = 30;

/** Some walls in a row, by number from 1, both ends belonging. */
export interface Piece {
  readonly from: number;
  readonly to: number;
  /** How many of them were read rightly: every fault found and named, and nothing called that is sound. */
  readonly right: ShareLimits;
  /** ms; null where no time was taken. */
  readonly medianMs: number | null;
}

export interface Counted {
  readonly count: number;
  readonly of: number;
}

export interface FamilyLine {
  readonly family: Family;
  /** Faulty walls, the last 30, and on how many the faults were found; null where none was read. */
  readonly hits: (Counted & { readonly limits: ShareLimits }) | null;
  /** Sound walls, the last 30, and on how many something was called. */
  readonly falseAlarms: (Counted & { readonly limits: ShareLimits }) | null;
  readonly isMastered: boolean;
  /** ms since 1970; null until a fault of the family was looked for. */
  readonly dueAt: number | null;
}

export interface WhereYouStand {
  /** Walls read alone for the first time. */
  readonly walls: number;
  readonly curve: readonly Piece[];
  readonly families: readonly FamilyLine[];
  /** Faults met, and missed, by what they can do; the worst first. */
  readonly misses: readonly (Counted & { readonly hazard: Hazard })[];
  /** What was found under another name, the most frequent first. */
  readonly misnamed: readonly { readonly fault: CheckId; readonly named: CheckId; readonly times: number }[];
  /** Marks with a certainty, and whether they were right. */
  readonly sure: readonly SureAnswer[];
}

/** What the record says of its reader. Goes through it once. */
export function whereYouStand(record: PracticeRecord, standing: Standing): WhereYouStand {
  const walls = readAlone(record);
  const met = walls.flatMap(({ faults }) => faults);
  const misnamed = new Map<string, { fault: CheckId; named: CheckId; times: number }>();
  for (const { fault, named } of met) {
    if (named === null || named === fault) continue;
    const key = `${fault} ${named}`;
    misnamed.set(key, { fault, named, times: (misnamed.get(key)?.times ?? 0) + 1 });
  }
  return {
    walls: walls.length,
    curve: curveOf(walls),
    families: standing.families.map(({ family, faulty, sound, mastery, review }) => ({
      family,
      hits: countedOf(faulty, true),
      falseAlarms: countedOf(sound, false),
      isMastered: mastery.isMastered,
      dueAt: review?.dueAt ?? null,
    })),
    misses: HAZARDS.map((hazard) => {
      const mine = met.filter((each) => each.hazard === hazard);
      return { hazard, count: mine.filter(({ outcome }) => outcome === 'missed').length, of: mine.length };
    }),
    misnamed: [...misnamed.values()].sort((a, b) => b.times - a.times),
    sure: walls.flatMap(({ faults, falseCalls }) => [
      ...faults.flatMap(({ sure, outcome }) => (sure === null ? [] : [{ sure, right: outcome === 'found' }])),
      ...falseCalls.flatMap(({ sure }) => (sure === null ? [] : [{ sure, right: false }])),
    ]),
  };
}

/** Walls read alone, each the first time it was seen. */
function readAlone(record: PracticeRecord): readonly WallAttempt[] {
  const seen = new Set<string>();
  return record.flatMap((attempt) => {
    if (attempt.kind === 'quick look') for (const { code } of attempt.walls) seen.add(code);
    if (!isOfWall(attempt)) return [];
    const isFresh = !seen.has(attempt.wall);
    seen.add(attempt.wall);
    return isFresh && (attempt.kind === 'full wall' || attempt.kind === 'set work') ? [attempt] : [];
  });
}

function curveOf(walls: readonly WallAttempt[]): readonly Piece[] {
  const pieces = Math.min(MOST_PIECES, Math.floor(walls.length / PIECE));
  return Array.from({ length: pieces }, (_, piece) => {
    const from = Math.round((piece * walls.length) / pieces);
    const to = Math.round(((piece + 1) * walls.length) / pieces);
    const mine = walls.slice(from, to);
    const right = mine.filter(isReadRightly).length;
    const times = mine.flatMap(({ spentMs }) => spentMs ?? []);
    const medianMs = times.length === 0 ? null : medianOf(times);
    return { from: from + 1, to, right: shareWithLimits(right, mine.length), medianMs };
  });
}

/** Every fault found and named, and nothing called that is sound. */
export function isReadRightly({ faults, falseCalls }: WallAttempt): boolean {
  return falseCalls.length === 0 && faults.every(({ outcome }) => outcome === 'found');
}

function countedOf(trials: readonly Trial[], right: boolean): FamilyLine['hits'] {
  const last = trials.slice(-LATEST);
  if (last.length === 0) return null;
  const count = last.filter((trial) => trial.right === right).length;
  return { count, of: last.length, limits: shareWithLimits(count, last.length) };
}
