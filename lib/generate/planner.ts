import type { CheckId } from '../inspect/finding';
import { RULE_SETS, type RuleSetId } from '../limits/limit';
import { WALL_KINDS, type WallKind } from '../wall/model';
import { type Brief, BriefError, DIFFICULTIES, ENGINE } from './brief';
import { type Chance, chanceOf } from './chance';
import { LEAST_SEVERITY, MOST_SEVERITY } from './fault';
import { FAULTS, faultFits, hasNeed } from './faults';
import { lookAlikesFor } from './look-alikes/fits';
import type { LookAlike } from './look-alikes/look-alike';
import type { Plan, Spoil } from './plan';
import { type SettingOut, settingOutOf } from './setting-out';
import { TOPIC_FAULTS, TOPICS_BY_CODE, type Topic } from './topics';

/** What makes a wall hard, by difficulty 1 to 5; nothing else does (training defaults of ours). */
interface Radicals {
  /** Deviation ÷ tolerance of a fault, from and to. */
  readonly severity: readonly [least: number, most: number];
  /** The same of what is sound, to. */
  readonly soundUpTo: number;
  /** Faults on a wall that is not sound, to; from one. */
  readonly faults: number;
  readonly lookAlikes: readonly [least: number, most: number];
  readonly mortarTone: readonly [least: number, most: number];
}

export const RADICALS: readonly Radicals[] = [
  { severity: [3, 4], soundUpTo: 0.5, faults: 1, lookAlikes: [0, 1], mortarTone: [0, 0] },
  { severity: [2.25, 3.25], soundUpTo: 0.7, faults: 2, lookAlikes: [1, 2], mortarTone: [0, 1] },
  { severity: [1.6, 2.5], soundUpTo: 0.85, faults: 3, lookAlikes: [2, 3], mortarTone: [1, 1] },
  { severity: [1.3, 1.8], soundUpTo: 0.9, faults: 3, lookAlikes: [3, 4], mortarTone: [1, 2] },
  { severity: [1.15, 1.5], soundUpTo: 0.9, faults: 4, lookAlikes: [4, 5], mortarTone: [2, 3] },
];

/** In a hundred walls for practice, this many are sound. */
export const SOUND_PERCENT = 40;
/** Of the departures that a wall could show, this many in a hundred are on it, within their limits. */
const TOLERATED_PERCENT = 50;
/** A departure that is tolerated takes up at least this share of what sound work may on the wall. */
const LEAST_TOLERATED = 0.6;
/** Walls of slips, in a hundred, of a topic that is not about what only ties or only slips have. */
const ADHERED_PERCENT = 25;

/**
 * Draws what a wall is to be from its brief. The incidentals (size, bond, mirroring) do not move its difficulty. A sound wall is drawn like a faulty
 * one and its faults are then kept within their limits, so that nothing of what it is built of, or how, tells the two apart.
 */
export function planOf(brief: Brief): Plan {
  const { kind, rules } = brief;
  if ((brief.engine ?? ENGINE) !== ENGINE) {
    throw new BriefError(
      `engine: ${brief.engine} is not this one, which is ${ENGINE}; lib/engines lays the wall`,
    );
  }
  const seed = seedOf(brief);
  const chance = chanceOf(seed, 0);
  const radicals = RADICALS[brief.difficulty - 1];
  if (radicals === undefined) throw new BriefError(`difficulty: ${brief.difficulty} is not one of ours`);
  const sound = chance.happens(SOUND_PERCENT);
  const masonry = masonryOf(brief.topic, chance);
  const shuffled = shuffledFaults(brief, masonry, chance);
  const count = chance.whole(1, Math.min(radicals.faults, shuffled.length));
  const drawn = shuffled.map((fault) => ({ fault, severity: severityOf(fault, radicals.severity, chance) }));
  const meant = drawn.slice(0, count);
  const settingOut = settingOutOf(kind, masonry, rules, meant, chance);
  const tolerated = drawTolerated(
    settingOut,
    meant.map(({ fault }) => fault),
    radicals.soundUpTo,
    chance,
  );
  return {
    ...settingOut,
    spoils: sound ? [] : meant,
    spares: drawn.slice(count).filter(({ fault }) => canCarry(settingOut, fault)),
    tolerated: tolerated.filter(({ fault }) => sound || meant.every((spoil) => spoil.fault !== fault)),
    soundUpTo: radicals.soundUpTo,
    lookAlikes: drawLookAlikes(settingOut, chance.whole(...radicals.lookAlikes), chance),
    mortarTone: chance.whole(...radicals.mortarTone),
    seed,
  };
}

/** What these are about, slips do not have. */
const STANDING_ONLY: readonly Topic[] = ['support', 'ties', 'water'];

function masonryOf(topic: Topic, chance: Chance): 'anchored' | 'adhered' {
  const adhered = chance.happens(ADHERED_PERCENT);
  if (topic === 'back-mortar') return 'adhered';
  return adhered && !STANDING_ONLY.includes(topic) ? 'adhered' : 'anchored';
}

/** On the grid of eighths, as far as its own bounds let it. */
function severityOf(fault: CheckId, [least, most]: Radicals['severity'], chance: Chance): number {
  const severity = chance.whole(Math.ceil(least * 100), Math.floor(most * 100)) / 100;
  return Math.max(
    FAULTS[fault].least ?? LEAST_SEVERITY,
    Math.min(severity, FAULTS[fault].most ?? MOST_SEVERITY),
  );
}

/** Whether a fault can stand on a wall that was not drawn for it. */
function canCarry({ bond, quoins, soldiers, thinBed }: SettingOut, fault: CheckId): boolean {
  if (!thinBed && hasNeed(fault, 'thin units')) return false;
  if ((quoins || soldiers) && hasNeed(fault, 'no tall units')) return false;
  return bond === 'running' || !hasNeed(fault, 'half lap');
}

/** What sound work departs by: half of what the wall could show, and all that it was drawn for. */
function drawTolerated(
  settingOut: SettingOut,
  meant: readonly CheckId[],
  soundUpTo: number,
  chance: Chance,
): readonly Spoil[] {
  const able = Object.values(FAULTS)
    .filter(
      ({ id, tolerated }) =>
        tolerated !== undefined &&
        faultFits(id, settingOut.kind, settingOut.masonry, settingOut.rules) &&
        canCarry(settingOut, id),
    )
    .map(({ id }) => id);
  return drawOf(able, able.length, chance).flatMap((fault) => {
    const most = Math.min(soundUpTo, FAULTS[fault].tolerated ?? 0);
    const severity = chance.whole(Math.round(most * LEAST_TOLERATED * 100), Math.round(most * 100)) / 100;
    // Two departures of one face would add up.
    const crowds = FAULTS[fault].ofFace && meant.some((each) => FAULTS[each].ofFace);
    const happens = chance.happens(TOLERATED_PERCENT) && !crowds;
    return happens || meant.includes(fault) ? [{ fault, severity }] : [];
  });
}

/** One seed for each brief: were it the brief's own, a seed would be sound or faulty under every topic alike. */
function seedOf({ topic, kind, difficulty, rules, seed }: Brief): number {
  const sort =
    ((TOPICS_BY_CODE.indexOf(topic) * WALL_KINDS.length + WALL_KINDS.indexOf(kind)) * DIFFICULTIES.length +
      difficulty) *
      RULE_SETS.length +
    RULE_SETS.indexOf(rules);
  return (seed ^ Math.imul(sort + 1, 0x85ebca6b)) | 0;
}

/** A plan with one chosen fault (or none), for trying a fault on every kind of wall. */
export function planWith(
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
  spoils: readonly Spoil[],
  seed: number,
): Plan {
  const chance = chanceOf(seed, 0);
  const settingOut = settingOutOf(kind, masonry, rules, spoils, chance);
  const { soundUpTo } = chance.pick(RADICALS);
  const faults = spoils.map(({ fault }) => fault);
  return {
    ...settingOut,
    spoils,
    spares: [],
    tolerated: drawTolerated(settingOut, faults, soundUpTo, chance).filter(
      ({ fault }) => !faults.includes(fault),
    ),
    soundUpTo,
    lookAlikes: drawLookAlikes(settingOut, chance.whole(0, 5), chance),
    mortarTone: chance.whole(0, 3),
    seed,
  };
}

/** The faults of a topic that fit, in the order drawn. */
function shuffledFaults(brief: Brief, masonry: 'anchored' | 'adhered', chance: Chance): readonly CheckId[] {
  const fitting = TOPIC_FAULTS[brief.topic].filter((fault) =>
    faultFits(fault, brief.kind, masonry, brief.rules),
  );
  return drawOf(fitting, fitting.length, chance);
}

function drawLookAlikes(settingOut: SettingOut, count: number, chance: Chance): readonly LookAlike[] {
  return drawOf(lookAlikesFor(settingOut), count, chance);
}

/** So many of a list, none twice, in the order drawn. */
function drawOf<T>(from: readonly T[], count: number, chance: Chance): readonly T[] {
  const left = [...from];
  const drawn: T[] = [];
  while (drawn.length < count && left.length > 0) {
    const each = chance.pick(left);
    left.splice(left.indexOf(each), 1);
    drawn.push(each);
  }
  return drawn;
}
