import type { CheckId } from '../inspect/finding';
import type { RuleSetId } from '../limits/limit';
import type { Bond, WallKind } from '../wall/model';
import type { Brief } from './brief';
import { type Chance, chanceOf } from './chance';
import { FAULTS, faultFits } from './fault-ways';
import { GABLE_TOP_UNITS } from './lay';
import { lookAlikesFor } from './look-alikes/fits';
import type { LookAlike } from './look-alikes/look-alike';
import type { Plan, Spoil } from './plan';
import { TOPIC_FAULTS } from './topics';

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
  const chance = chanceOf(brief.seed, 0);
  const radicals = RADICALS[brief.difficulty - 1] ?? {
    severity: [2, 3],
    faults: [1, 2],
    lookAlikes: [1, 2],
    mortarTone: [1, 1],
  };
  const masonry = brief.topic === 'back-mortar' ? 'adhered' : 'anchored';
  const sound = chance.happens(SOUND_PERCENT);
  const faults = sound ? [] : drawFaults(brief, masonry, chance.whole(...radicals.faults), chance);
  const [least, most] = radicals.severity;
  const spoils = faults.map((fault): Spoil => {
    const severity = (least * 8 + chance.whole(0, Math.round((most - least) * 8))) / 8;
    return { fault, severity: Math.min(severity, FAULTS[fault].most) };
  });
  return {
    ...incidentals(brief.kind, chance),
    masonry,
    rules: brief.rules,
    bond: bondFor(brief.kind, spoils, chance),
    spoils,
    lookAlikes: drawLookAlikes(
      brief.kind,
      masonry,
      brief.rules,
      spoils,
      chance.whole(...radicals.lookAlikes),
      chance,
    ),
    mortarTone: chance.whole(...radicals.mortarTone),
    seed: brief.seed,
  };
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
  return {
    ...incidentals(kind, chance),
    masonry,
    rules,
    bond: bondFor(kind, spoils, chance),
    spoils,
    lookAlikes: drawLookAlikes(kind, masonry, rules, spoils, chance.whole(0, 5), chance),
    mortarTone: chance.whole(0, 3),
    seed,
  };
}

/** Units more than a plain panel: beside an opening there must be field to tie. */
const EXTRA_UNITS: Readonly<Record<WallKind, number>> = {
  'plain-panel': 0,
  'window-panel': 4,
  'door-corner': 4,
  'gable-end': 2,
};

function incidentals(
  kind: WallKind,
  chance: Chance,
): Pick<Plan, 'kind' | 'modules' | 'courses' | 'mirrored'> {
  const modules = chance.whole(12, 15) + EXTRA_UNITS[kind];
  const courses = chance.whole(28, 34);
  // A gable steps in from an even course, so that the rake meets the bond and leaves no small pieces.
  const eaves = 16 + 2 * chance.whole(0, 1);
  return {
    kind,
    modules,
    courses: kind === 'gable-end' ? eaves + modules - GABLE_TOP_UNITS : courses,
    mirrored: chance.happens(50),
  };
}

/** Third bond where nothing on the wall leans on the half lap: a tipped unit, a drift, a raking end. */
function bondFor(kind: WallKind, spoils: readonly Spoil[], chance: Chance): Bond {
  const third = chance.happens(30);
  const halfLap = kind === 'gable-end' || spoils.some(({ fault }) => HALF_LAP.has(fault));
  return third && !halfLap ? 'third' : 'running';
}

const HALF_LAP: ReadonlySet<CheckId> = new Set([
  'tapering-bed',
  'sliver-piece',
  'perpend-drift',
  'course-off-level',
]);

function drawFaults(
  brief: Brief,
  masonry: 'anchored' | 'adhered',
  count: number,
  chance: Chance,
): readonly CheckId[] {
  const fitting = TOPIC_FAULTS[brief.topic].filter((fault) =>
    faultFits(fault, brief.kind, masonry, brief.rules),
  );
  const left = [...fitting];
  const drawn: CheckId[] = [];
  while (drawn.length < count && left.length > 0) {
    const fault = chance.pick(left);
    left.splice(left.indexOf(fault), 1);
    drawn.push(fault);
  }
  return drawn;
}

function drawLookAlikes(
  kind: WallKind,
  masonry: 'anchored' | 'adhered',
  rules: RuleSetId,
  spoils: readonly Spoil[],
  count: number,
  chance: Chance,
): readonly LookAlike[] {
  const thinBed = spoils.some(({ fault }) => fault === 'raked-thin-veneer');
  const left = [...lookAlikesFor(kind, masonry, rules, thinBed)];
  const drawn: LookAlike[] = [];
  while (drawn.length < count && left.length > 0) {
    const lookAlike = chance.pick(left);
    left.splice(left.indexOf(lookAlike), 1);
    drawn.push(lookAlike);
  }
  return drawn;
}
