import { type Chance, chanceOf } from '../../../lib/generate/chance';
import { codeOf } from '../../../lib/generate/wall-code';
import type { CheckId } from '../../../lib/inspect/finding';
import type { Attempt, WallWay } from '../../../lib/learning/attempt';
import { nextStep } from '../../../lib/learning/chooser';
import { FAMILIES, type Family, faultsOf } from '../../../lib/learning/family';
import { REFERENCE_DIFFICULTY, standingOf } from '../../../lib/learning/standing';
import { LEARNERS, type LearnerKind, type SimulatedLearner, shareOf } from './simulated-learner';

export type ChoiceWay = 'chooser' | 'random' | 'ladder';

export interface Course {
  /** Walls read until every family was truly read well; null where that never came. */
  readonly wallsToAll: number | null;
  /** Of the walls until then, those of a family that was truly read well already. */
  readonly onKnown: number;
  /** Walls until each family was met once. */
  readonly wallsToMeetAll: number | null;
  /** Faults never met by then. */
  readonly neverMet: number;
  /** Families said to be mastered, day by day, and those of them that truly were not. */
  readonly said: number;
  readonly saidWrongly: number;
  /** Until all families were said to be mastered. */
  readonly wallsToProof: number | null;
}

const WALLS_A_DAY = 8;
const MOST_WALLS = 360;
const DAY = 86_400_000;
/** 5 January 2026, 08:00 UTC. */
const START = 1_767_600_000_000;
const TRUE_HITS = 0.8;
const TRUE_FALSE_CALLS = 0.2;

interface Shown {
  readonly way: WallWay;
  readonly family: Family;
  readonly difficulty: number;
  readonly isSound: boolean;
  readonly fault: CheckId | null;
}

/** One learner's course, wall by wall, eight a day. */
export function courseOf(kind: LearnerKind, way: ChoiceWay, seed: number): Course {
  const learner = LEARNERS[kind](seed);
  const chance = chanceOf(seed, 9);
  const record: Attempt[] = [];
  const met = new Map<CheckId, number>();
  const families = new Set<Family>();
  let walls = 0;
  let looks = 0;
  let toAll: number | null = null;
  let toMeet: number | null = null;
  let toProof: number | null = null;
  let onKnown = 0;
  let said = 0;
  let saidWrongly = 0;
  while (walls < MOST_WALLS && (toAll === null || (way === 'chooser' && toProof === null))) {
    const day = Math.floor(walls / WALLS_A_DAY);
    const at = START + day * DAY + (record.length % 100) * 300_000;
    const isWell = (family: Family) => knows(learner, family, day);
    const shown = pick(way, record, at, walls, chance);
    if (shown === 'look') {
      record.push(roundOf(learner, record.length, at, day, chance));
      looks += 1;
      // A round that never ends would hide that no wall is chosen.
      if (looks > MOST_WALLS) break;
      continue;
    }
    const cost = shown.way === 'guided wall' ? 2 : 1;
    if (toAll === null && isWell(shown.family)) onKnown += cost;
    const attempt = readWall(learner, shown, record.length, at, day, chance);
    record.push(attempt);
    walls += cost;
    families.add(shown.family);
    for (const { fault } of attempt.faults) if (!met.has(fault)) met.set(fault, walls);
    for (let time = 0; time < cost; time++) learner.learn(shown.family, shown.isSound, day);
    if (toMeet === null && families.size === FAMILIES.length) toMeet = walls;
    if (toAll === null && FAMILIES.every(isWell)) toAll = walls;
    if (walls % WALLS_A_DAY < cost) {
      const mastered = standingOf(record).families.filter(({ mastery }) => mastery.isMastered);
      said += mastered.length;
      saidWrongly += mastered.filter(({ family }) => !isWell(family)).length;
      if (toProof === null && mastered.length === FAMILIES.length) toProof = walls;
    }
  }
  const all = FAMILIES.flatMap(faultsOf);
  const neverMet = all.filter((fault) => (met.get(fault) ?? MOST_WALLS) > (toAll ?? MOST_WALLS)).length;
  return {
    ...{ wallsToAll: toAll, onKnown, wallsToMeetAll: toMeet, neverMet },
    ...{ said, saidWrongly, wallsToProof: toProof },
  };
}

function knows(learner: SimulatedLearner, family: Family, day: number): boolean {
  return (
    learner.hitChance(family, REFERENCE_DIFFICULTY, day) >= TRUE_HITS &&
    learner.falseCallChance(family) <= TRUE_FALSE_CALLS
  );
}

function pick(
  way: ChoiceWay,
  record: readonly Attempt[],
  at: number,
  walls: number,
  chance: Chance,
): Shown | 'look' {
  const isSound = chance.happens(40);
  if (way === 'chooser') {
    const step = nextStep(record, standingOf(record), at, () => shareOf(chance));
    if (step.kind === 'quick look') return 'look';
    const { kind, family, difficulty, fault } = step;
    return { way: kind, family, difficulty, fault, isSound: step.isSound };
  }
  if (way === 'random') {
    const difficulty = chance.whole(1, 5);
    return { way: 'full wall', family: chance.pick(FAMILIES), difficulty, isSound, fault: null };
  }
  // One family after the other in the order of the lessons, ten walls each, harder by and by; then from the first again.
  const family = FAMILIES[Math.floor(walls / 10) % FAMILIES.length] ?? 'joints';
  const turn = Math.floor(walls / (10 * FAMILIES.length));
  const difficulty = Math.min(5, 1 + Math.floor((walls % 10) / 3) + turn);
  return { way: 'full wall', family, difficulty, isSound, fault: null };
}

function readWall(
  learner: SimulatedLearner,
  { way, family, difficulty, isSound, fault }: Shown,
  number: number,
  at: number,
  day: number,
  chance: Chance,
) {
  const done = { version: 1, id: String(number), at, zone: 0, spentMs: null } as const;
  const isHit = shareOf(chance) < learner.hitChance(family, difficulty, day);
  const isCalled = isSound && shareOf(chance) < learner.falseCallChance(family);
  const shown = fault ?? chance.pick(faultsOf(family));
  return {
    ...done,
    ...{ kind: way, wall: `wall ${number}`, topic: family, difficulty, marks: [] },
    faults: isSound
      ? []
      : [
          {
            fault: shown,
            hazard: 'looks' as const,
            outcome: isHit ? ('found' as const) : ('missed' as const),
            named: isHit ? shown : null,
            sure: null,
            readRight: null,
          },
        ],
    falseCalls: isCalled ? [{ fault: shown, sure: null }] : [],
  };
}

/** A glance shows less than a wall read in full: half of what would be missed is guessed. Nothing is taken to be learnt by it. */
function roundOf(
  learner: SimulatedLearner,
  number: number,
  at: number,
  day: number,
  chance: Chance,
): Attempt {
  const topic = chance.pick(FAMILIES);
  const walls = Array.from({ length: 10 }, (_, place) => {
    const faulty = chance.happens(50);
    const hit = learner.hitChance(topic, 1, day);
    const says = faulty ? hit + (1 - hit) / 2 : learner.falseCallChance(topic);
    const brief = {
      topic,
      kind: 'plain-panel',
      difficulty: 1,
      rules: 'canada',
      seed: number * 10 + place,
    } as const;
    return { code: codeOf(brief), faulty, saidFaulty: shareOf(chance) < says };
  });
  const done = { version: 1, id: String(number), at, zone: 0, spentMs: null } as const;
  return {
    ...done,
    kind: 'quick look',
    rules: 'canada',
    round: number,
    look: 'face',
    level: 1,
    time: 30,
    walls,
  };
}
