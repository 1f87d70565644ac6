import type { CheckId } from '../inspect/finding';
import { RULE_SETS, type RuleSetId } from '../limits/limit';
import { type Bond, TALL_COURSES, WALL_KINDS, type WallKind } from '../wall/model';
import { type Brief, BriefError, DIFFICULTIES, ENGINE } from './brief';
import { type Chance, chanceOf } from './chance';
import { FAULTS, faultFits, hasNeed } from './faults';
import { GABLE_TOP_UNITS } from './lay';
import { lookAlikesFor } from './look-alikes/fits';
import type { LookAlike } from './look-alikes/look-alike';
import type { Plan, Spoil } from './plan';
import { TOPIC_FAULTS, TOPICS } from './topics';

/** What makes a wall hard, by difficulty 1 to 5; nothing else does (training defaults of ours). */
interface Radicals {
  /** Deviation ÷ tolerance, from and to. */
  readonly severity: readonly [least: number, most: number];
  /** Faults on a wall that is not sound. */
  readonly faults: readonly [least: number, most: number];
  readonly lookAlikes: readonly [least: number, most: number];
  readonly mortarTone: readonly [least: number, most: number];
}

export const RADICALS: readonly Radicals[] = [
  { severity: [3, 4], faults: [1, 1], lookAlikes: [0, 1], mortarTone: [0, 0] },
  { severity: [2.5, 3.5], faults: [1, 2], lookAlikes: [1, 2], mortarTone: [0, 1] },
  { severity: [2, 3], faults: [1, 3], lookAlikes: [2, 3], mortarTone: [1, 1] },
  { severity: [1.75, 2.5], faults: [2, 3], lookAlikes: [3, 4], mortarTone: [1, 2] },
  { severity: [1.6, 2], faults: [2, 4], lookAlikes: [4, 5], mortarTone: [2, 3] },
];

/** In a hundred walls for practice, this many are sound. */
export const SOUND_PERCENT = 40;

/** Draws what a wall is to be from its brief. The incidentals (size, bond, mirroring) do not move its difficulty. */
export function planOf(brief: Brief): Plan {
  const { kind, rules } = brief;
  if ((brief.engine ?? ENGINE) !== ENGINE) {
    throw new BriefError(
      `engine: ${brief.engine} is not this one, which is ${ENGINE}; lib/engines lays the wall`,
    );
  }
  const seed = seedOf(brief);
  const chance = chanceOf(seed, 0);
  const radicals = RADICALS[brief.difficulty - 1] ?? {
    severity: [2, 3],
    faults: [1, 2],
    lookAlikes: [1, 2],
    mortarTone: [1, 1],
  };
  const masonry = brief.topic === 'back-mortar' ? 'adhered' : 'anchored';
  const sound = chance.happens(SOUND_PERCENT);
  const count = chance.whole(...radicals.faults);
  const [least, most] = radicals.severity;
  const drawn = sound
    ? []
    : shuffledFaults(brief, masonry, chance).map((fault): Spoil => {
        const severity = (least * 8 + chance.whole(0, Math.round((most - least) * 8))) / 8;
        return { fault, severity: Math.min(severity, FAULTS[fault].most) };
      });
  const spoils = drawn.slice(0, count);
  const looks = looksOf(kind, masonry, rules, spoils, chance);
  return {
    ...looks,
    spoils,
    spares: drawn.slice(count).filter(({ fault }) => isSpare(fault, looks)),
    lookAlikes: drawLookAlikes(looks, spoils, chance.whole(...radicals.lookAlikes), chance),
    mortarTone: chance.whole(...radicals.mortarTone),
    seed,
  };
}

/** Whether a fault can come in for another on a wall that was not drawn for it. */
function isSpare(fault: CheckId, { bond, quoins }: Looks): boolean {
  if (hasNeed(fault, 'thin units')) return false;
  if (quoins && hasNeed(fault, 'no quoins')) return false;
  return bond === 'running' || !hasNeed(fault, 'half lap');
}

/** One seed for each brief: were it the brief's own, a seed would be sound or faulty under every topic alike. */
function seedOf({ topic, kind, difficulty, rules, seed }: Brief): number {
  const sort =
    ((TOPICS.indexOf(topic) * WALL_KINDS.length + WALL_KINDS.indexOf(kind)) * DIFFICULTIES.length +
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
  const looks = looksOf(kind, masonry, rules, spoils, chance);
  return {
    ...looks,
    spoils,
    spares: [],
    lookAlikes: drawLookAlikes(looks, spoils, chance.whole(0, 5), chance),
    mortarTone: chance.whole(0, 3),
    seed,
  };
}

type Looks = Pick<
  Plan,
  | 'kind'
  | 'masonry'
  | 'rules'
  | 'modules'
  | 'courses'
  | 'mirrored'
  | 'bond'
  | 'soldiers'
  | 'quoins'
  | 'finish'
>;

/** What the wall is built of and how it is set out, as its faults allow. */
function looksOf(
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
  spoils: readonly Spoil[],
  chance: Chance,
): Looks {
  const [soldiers, quoins, stone] = [
    chance.happens(SOLDIERS_PERCENT),
    chance.happens(QUOINS_PERCENT),
    chance.happens(STONE_PERCENT[masonry]),
  ];
  const anchored = masonry === 'anchored';
  const withQuoins = quoins && anchored && !stone && !spoils.some(({ fault }) => hasNeed(fault, 'no quoins'));
  const bond = bondFor(kind, spoils, chance);
  return {
    ...incidentals(kind, rules, withQuoins, chance),
    masonry,
    rules,
    // Beside quoins a third bond would leave thirds that come again too seldom to be closers.
    bond: withQuoins ? 'running' : bond,
    soldiers: soldiers && anchored && !stone && (kind === 'window-panel' || kind === 'door-corner'),
    quoins: withQuoins,
    finish: stone ? 'squared stone' : 'brick',
  };
}

/** In a hundred walls that can have them: soldiers over openings, quoins; walls of squared stone. */
const SOLDIERS_PERCENT = 45;
const QUOINS_PERCENT = 30;
const STONE_PERCENT = { anchored: 20, adhered: 50 } as const;

/** Units more than a plain panel: beside an opening there must be field to tie. */
const EXTRA_UNITS: Readonly<Record<WallKind, number>> = {
  'plain-panel': 0,
  'window-panel': 4,
  'door-corner': 4,
  'gable-end': 2,
};

/** Courses of a wall, from and to. Over a door a storey: its rows of ties, which count down from the top in the United Kingdom, clear the head. */
function coursesOf(kind: WallKind, rules: RuleSetId): readonly [least: number, most: number] {
  if (kind !== 'door-corner') return [28, 34];
  return rules === 'united-kingdom' ? [33, 34] : [39, 41];
}

function incidentals(
  kind: WallKind,
  rules: RuleSetId,
  quoins: boolean,
  chance: Chance,
): Pick<Plan, 'kind' | 'modules' | 'courses' | 'mirrored'> {
  const modules = chance.whole(12, 15) + EXTRA_UNITS[kind];
  const courses = chance.whole(...coursesOf(kind, rules));
  // A gable steps in from a course that ends in halves, so that the rake meets the bond and leaves no small pieces.
  const eaves = 16 + 2 * chance.whole(0, 1);
  return {
    kind,
    modules,
    // A pile of quoins is of whole ones.
    courses:
      kind === 'gable-end'
        ? (quoins ? GABLE_WITH_QUOINS : eaves) + modules - GABLE_TOP_UNITS
        : courses - (quoins ? courses % TALL_COURSES : 0),
    mirrored: chance.happens(50),
  };
}

/** The course from which a gable steps in over whole quoins: beside them the odd ones end in halves. */
const GABLE_WITH_QUOINS = 19;

/** Third bond where nothing on the wall leans on the half lap. */
function bondFor(kind: WallKind, spoils: readonly Spoil[], chance: Chance): Bond {
  const third = chance.happens(30);
  const halfLap = kind === 'gable-end' || spoils.some(({ fault }) => hasNeed(fault, 'half lap'));
  return third && !halfLap ? 'third' : 'running';
}

/** The faults of a topic that fit, in the order drawn. */
function shuffledFaults(brief: Brief, masonry: 'anchored' | 'adhered', chance: Chance): readonly CheckId[] {
  const fitting = TOPIC_FAULTS[brief.topic].filter((fault) =>
    faultFits(fault, brief.kind, masonry, brief.rules),
  );
  return drawOf(fitting, fitting.length, chance);
}

function drawLookAlikes(
  looks: Looks,
  spoils: readonly Spoil[],
  count: number,
  chance: Chance,
): readonly LookAlike[] {
  const thinBed = spoils.some(({ fault }) => hasNeed(fault, 'thin units'));
  return drawOf(lookAlikesFor(looks, thinBed), count, chance);
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
