import { medianOf } from '../geometry/interval';
import type { CheckId } from '../inspect/finding';
import { type Attempt, dayOf, isOfWall, type WallAttempt, type WallWay } from './attempt';
import { FAMILIES, type Family, familyOf, isFamily } from './family';
import { type Mastery, masteryOf, type Trial } from './mastery';
import type { PracticeRecord } from './record';
import { afterAnswer, GUESS, harderAt, NO_ANSWERS, type Skill } from './skill';
import { gradeOf, type Review, reviewed } from './spacing';

/** From this difficulty on a wall tells whether a family is mastered. */
export const REFERENCE_DIFFICULTY = 3;

export interface FamilyStanding {
  readonly family: Family;
  /** Ways in which a wall of the family has been read, and how often. */
  readonly ways: Readonly<Record<WallWay, number>>;
  /** Fresh walls with a fault of the family, and fresh walls of the family with nothing wrong: all of them, whatever the difficulty. */
  readonly faulty: readonly Trial[];
  readonly sound: readonly Trial[];
  readonly mastery: Mastery;
  /** Null until a fault of the family was looked for. */
  readonly review: Review | null;
  /** Faults of the family met so far. */
  readonly met: ReadonlySet<CheckId>;
}

/** What is known of a learner: worked out from the record alone. */
export interface Standing {
  readonly skill: Skill;
  /** In the order of the lessons. */
  readonly families: readonly FamilyStanding[];
  /** Walls with several faults of which one was found; the other faults on them, and how many of these were found. */
  readonly others: { readonly walls: number; readonly faults: number; readonly found: number };
  /** Walls with one fault, and how often it was found. */
  readonly single: { readonly walls: number; readonly found: number };
  /** Every wall read so far, by code. */
  readonly seen: ReadonlySet<string>;
}

interface Gathering {
  readonly ways: Record<WallWay, number>;
  readonly faulty: Trial[];
  readonly sound: Trial[];
  readonly counted: { readonly faulty: Trial[]; readonly sound: Trial[] };
  readonly met: Set<CheckId>;
  review: Review | null;
  reviewDay: number | null;
}

/** Goes once through the record, the oldest first. Only the first reading of a wall counts. */
export function standingOf(record: PracticeRecord): Standing {
  const gathered = new Map(FAMILIES.map((family) => [family, fresh()]));
  const seen = new Set<string>();
  const times: number[] = [];
  const others = { walls: 0, faults: 0, found: 0 };
  const single = { walls: 0, found: 0 };
  let skill = NO_ANSWERS;
  for (const attempt of record) {
    if (attempt.kind === 'quick look') for (const { code } of attempt.walls) seen.add(code);
    if (!isOfWall(attempt)) continue;
    const isFresh = !seen.has(attempt.wall);
    seen.add(attempt.wall);
    countWay(gathered, attempt);
    if (!isFresh || (attempt.kind !== 'full wall' && attempt.kind !== 'set work')) continue;
    skill = afterWall(skill, attempt);
    countTrials(gathered, attempt);
    review(gathered, attempt, usualOf(times));
    countOthers(attempt, others, single);
    if (attempt.spentMs !== null) times.push(attempt.spentMs);
  }
  const families = [...gathered].map(
    ([family, { ways, faulty, sound, counted, met, review: last }]): FamilyStanding => ({
      ...{ family, ways, faulty, sound, met, review: last },
      mastery: masteryOf(counted.faulty, counted.sound),
    }),
  );
  return { skill, families, others, single, seen };
}

function fresh(): Gathering {
  return {
    ways: { 'full wall': 0, 'set work': 0, pair: 0, 'guided wall': 0 },
    faulty: [],
    sound: [],
    counted: { faulty: [], sound: [] },
    met: new Set(),
    review: null,
    reviewDay: null,
  };
}

/** The families whose faults are on a wall. */
export function familiesOn({ faults }: WallAttempt): readonly Family[] {
  return [...new Set(faults.flatMap(({ fault }) => familyOf(fault) ?? []))];
}

function isRead({ faults }: WallAttempt, family: Family): boolean {
  return faults.every(({ fault, outcome }) => familyOf(fault) !== family || outcome === 'found');
}

function countWay(gathered: ReadonlyMap<Family, Gathering>, attempt: WallAttempt): void {
  const about = isFamily(attempt.topic) ? [attempt.topic] : [];
  for (const family of new Set([...about, ...familiesOn(attempt)])) {
    const mine = gathered.get(family);
    if (mine === undefined) continue;
    mine.ways[attempt.kind] += 1;
    for (const { fault } of attempt.faults) if (familyOf(fault) === family) mine.met.add(fault);
  }
}

function countTrials(gathered: ReadonlyMap<Family, Gathering>, attempt: WallAttempt): void {
  const { topic, faults, falseCalls, difficulty } = attempt;
  const day = dayOf(attempt);
  const counts = difficulty >= REFERENCE_DIFFICULTY;
  for (const family of familiesOn(attempt)) {
    const trial = { day, difficulty, right: isRead(attempt, family) };
    gathered.get(family)?.faulty.push(trial);
    if (counts) gathered.get(family)?.counted.faulty.push(trial);
  }
  if (faults.length > 0 || !isFamily(topic)) return;
  const trial = { day, difficulty, right: falseCalls.length === 0 };
  gathered.get(topic)?.sound.push(trial);
  if (counts) gathered.get(topic)?.counted.sound.push(trial);
}

/** One a family and day: the first. */
function review(
  gathered: ReadonlyMap<Family, Gathering>,
  attempt: WallAttempt,
  usualMs: number | null,
): void {
  for (const family of familiesOn(attempt)) {
    const mine = gathered.get(family);
    const grade = gradeOf(attempt, family, usualMs);
    if (mine === undefined || grade === null || mine.reviewDay === dayOf(attempt)) continue;
    mine.review = reviewed(mine.review, attempt.at, grade);
    mine.reviewDay = dayOf(attempt);
  }
}

function countOthers(
  { faults }: WallAttempt,
  others: { walls: number; faults: number; found: number },
  single: { walls: number; found: number },
): void {
  const found = faults.filter(({ outcome }) => outcome === 'found').length;
  if (faults.length === 1) {
    single.walls += 1;
    single.found += found;
  }
  if (faults.length < 2 || found === 0) return;
  others.walls += 1;
  others.faults += faults.length - 1;
  others.found += found - 1;
}

function afterWall(skill: Skill, attempt: WallAttempt): Skill {
  return familiesOn(attempt).reduce(
    (so, family) =>
      afterAnswer(
        so,
        { family, harder: harderAt(attempt.difficulty), guess: GUESS },
        isRead(attempt, family),
      ),
    skill,
  );
}

/** Times further back say little of how fast a reader is now. */
const LATEST_TIMES = 50;

function usualOf(times: readonly number[]): number | null {
  return times.length === 0 ? null : medianOf(times.slice(-LATEST_TIMES));
}

/** The last attempt of a kind that is about one family, and that family. */
export function lastFamily(record: readonly Attempt[]): Family | null {
  const last = record.findLast(isOfWall);
  if (last === undefined) return null;
  return isFamily(last.topic) ? last.topic : (familiesOn(last)[0] ?? null);
}
