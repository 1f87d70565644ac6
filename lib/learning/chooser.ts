import type { Topic } from '../generate/topics';
import type { CheckId } from '../inspect/finding';
import { isOfWall } from './attempt';
import { type Family, faultsOf, isFamily } from './family';
import { AIM, areRight, callsOnSound, chanceAt, isWell, needsWork, stopsAfterFirst } from './need';
import type { PracticeRecord } from './record';
import { leftOf } from './spacing';
import { type FamilyStanding, lastFamily, REFERENCE_DIFFICULTY, type Standing } from './standing';

/** Why a family was chosen. */
export type Reason = 'new' | 'due' | 'weak' | 'proof' | 'kept';

interface Chosen {
  readonly family: Family;
  readonly reason: Reason;
  readonly difficulty: number;
}

/** A wall to mark. What is asked of it is for the search alone: it is not shown before the wall is marked. */
export interface WallStep extends Chosen {
  readonly kind: 'guided wall' | 'pair' | 'full wall';
  readonly topic: Topic;
  readonly isSound: boolean;
  /** Null: any of the family. */
  readonly fault: CheckId | null;
  /** Two faults or more, where the wall is not sound. */
  readonly hasSeveral: boolean;
}

export type Step = WallStep | (Chosen & { readonly kind: 'quick look' });

/** A number from 0 to under 1, another each time. */
export type Draw = () => number;

/** How a family is met: a wall with all shown, a pair, then a wall alone. */
const INTRODUCTION = ['guided wall', 'pair', 'full wall'] as const;
/** The share of walls with nothing wrong. */
const SOUND_SHARE = 0.4;
const MORE_SOUND = 0.6;
const FEWER_SOUND = 0.25;
/** Full walls in a row before quick looks. */
const WALLS_BEFORE_LOOKS = 3;
/** Walls between two introductions, at most, as long as a family is still to be met. */
const MOST_BETWEEN = 4;
/** What to practise next. `now` is the time, ms since 1970. */
export function nextStep(record: PracticeRecord, standing: Standing, now: number, draw: Draw): Step {
  const { families } = standing;
  const begun = families.find(isBeingMet);
  if (begun !== undefined) return introduction(begun, standing, draw);
  if (areLooksNext(record)) {
    const [{ family }, reason] = choose(record, standing, now, draw);
    return { kind: 'quick look', family, reason, difficulty: isWell(standing, family) ? 3 : 1 };
  }
  const unmet = families.filter(({ ways }) => readings(ways) === 0);
  const [first] = unmet;
  if (first !== undefined && hasRoom(families, record, standing)) return introduction(first, standing, draw);
  const [chosen, reason] = choose(record, standing, now, draw);
  return fullWall(chosen, reason, standing, draw);
}

function readings(ways: FamilyStanding['ways']): number {
  return Object.values(ways).reduce((sum, count) => sum + count, 0);
}

/** Begun with, and not all of its introduction done. Whoever has read three walls of it alone needs none. */
function isBeingMet({ ways }: FamilyStanding): boolean {
  const alone = ways['full wall'] + ways['set work'];
  return readings(ways) > 0 && alone < INTRODUCTION.length && INTRODUCTION.some((way) => ways[way] === 0);
}

function introduction(of: FamilyStanding, standing: Standing, draw: Draw): WallStep {
  const kind = INTRODUCTION.find((way) => of.ways[way] === 0) ?? 'full wall';
  const wall = fullWall(of, 'new', standing, draw);
  // What is shown, and one wall of a pair, is faulty.
  return { ...wall, kind, difficulty: 1, hasSeveral: false, isSound: kind === 'full wall' && wall.isSound };
}

function areLooksNext(record: PracticeRecord): boolean {
  const last = record.slice(-WALLS_BEFORE_LOOKS);
  return last.length === WALLS_BEFORE_LOOKS && last.every(({ kind }) => kind === 'full wall');
}

/** Whether a new family is met next: nothing else is badly read, only one would come back and back, or the last one was met a while ago. */
function hasRoom(families: readonly FamilyStanding[], record: PracticeRecord, standing: Standing): boolean {
  const met = families.filter(({ ways }) => readings(ways) > 0);
  const since =
    record.length - 1 - record.findLastIndex(({ kind }) => kind === 'pair' || kind === 'guided wall');
  return since > MOST_BETWEEN || met.length === 1 || met.every(({ family }) => isWell(standing, family));
}

/**
 * Due families first: those read badly before those read well, which come back in one wall of five at most as long as anything is read
 * badly. Then what is read badly, the longest unread first; then what is still to be proved. Never the same family twice running, if there
 * is another.
 */
function choose(
  record: PracticeRecord,
  standing: Standing,
  now: number,
  draw: Draw,
): readonly [FamilyStanding, Reason] {
  const { families } = standing;
  const last = lastFamily(record);
  const met = families.filter(({ ways }) => readings(ways) > 0);
  const open = met.filter(({ family }) => family !== last);
  const others = open.length > 0 ? open : met.length > 0 ? met : families;
  const weak = others
    .filter((each) => needsWork(each, standing))
    .sort((a, b) => lastReadAt(record, a.family) - lastReadAt(record, b.family));
  const isDue = ({ review }: FamilyStanding) => review !== null && review.dueAt <= now;
  const weakAndDue = weak.find(isDue);
  if (weakAndDue) return [weakAndDue, 'due'];
  const [kept] = others
    .flatMap((each) =>
      each.review !== null && isDue(each) ? [{ each, left: leftOf(each.review, now) }] : [],
    )
    .sort((a, b) => a.left - b.left);
  const needsNone = (family: Family) =>
    families.some((each) => each.family === family && !needsWork(each, standing));
  const lately = record.filter(isOfWall).slice(1 - KEPT_IN);
  const hasKeptLately = lately.some(({ topic }) => isFamily(topic) && needsNone(topic));
  if (kept && (weak.length === 0 || !hasKeptLately)) return [kept.each, 'due'];
  if (weak[0]) return [weak[0], 'weak'];
  const unsettled = others.filter(({ mastery }) => !mastery.isMastered);
  return unsettled.length > 0 ? [pickOf(unsettled, draw), 'proof'] : [pickOf(others, draw), 'kept'];
}

/** What is read well comes back in one wall of so many, as long as anything is not. */
const KEPT_IN = 5;

function lastReadAt(record: PracticeRecord, family: Family): number {
  return record.findLastIndex((attempt) => isOfWall(attempt) && attempt.topic === family);
}

function pickOf<T>(from: readonly T[], draw: Draw): T {
  const picked = from[Math.floor(draw() * from.length)];
  if (picked === undefined) throw new RangeError('there is nothing to choose from');
  return picked;
}

function fullWall(of: FamilyStanding, reason: Reason, standing: Standing, draw: Draw): WallStep {
  const { family, mastery } = of;
  const difficulty = difficultyFor(of, standing);
  return {
    ...{ kind: 'full wall', family, reason, difficulty },
    // What is mastered is looked for among everything else, as on site.
    topic: mastery.isMastered ? 'mixed' : family,
    isSound: draw() < soundChance(of),
    fault: faultFor(of, draw),
    hasSeveral: stopsAfterFirst(standing) && difficulty > 1,
  };
}

/**
 * As near the aim as there is; a step harder after two walls read rightly. A family is proved at the reference difficulty, and goes beyond
 * it once it is mastered.
 */
function difficultyFor({ family, mastery, faulty }: FamilyStanding, standing: Standing): number {
  const most = mastery.isMastered ? 5 : REFERENCE_DIFFICULTY;
  const off = (difficulty: number) => Math.abs(chanceAt(standing, family, difficulty) - AIM);
  const able = Array.from({ length: most }, (_, index) => index + 1);
  const nearest = able.reduce((best, each) => (off(each) < off(best) ? each : best));
  const two = faulty.slice(-2);
  if (two.length < 2 || !areRight(two)) return nearest;
  return Math.max(nearest, Math.min(most, 1 + Math.min(...two.map(({ difficulty }) => difficulty))));
}

/** About two in five. More often where the family has had few, or where something is called on them: what is sound is learnt from sound walls. */
function soundChance({ sound, faulty }: FamilyStanding): number {
  if (callsOnSound(sound)) return MORE_SOUND;
  return sound.length < SOUND_SHARE * (sound.length + faulty.length) ? MORE_SOUND : FEWER_SOUND;
}

/** One of the family that was not met yet, or any. */
function faultFor({ family, met }: FamilyStanding, draw: Draw): CheckId | null {
  const unmet = faultsOf(family).filter((fault) => !met.has(fault));
  return unmet[Math.floor(draw() * unmet.length)] ?? null;
}
