import type { RuleSetId } from '../limits/limit';
import type { Droppings, Flashing } from '../wall/flashing';
import type { Opening, Panel, Support, Unit, Wall } from '../wall/model';
import { WALL_VERSION } from '../wall/model';
import { chanceOf } from './chance';
import { type Draft, lengthOf, openingOf, type PanelDraft, stepOf } from './draft';
import { settingOutFor } from './families';
import { layBatches } from './lay-batches';
import { layDrainage } from './lay-drainage';
import { CAVITY, layLedge, layLintel } from './lay-supports';
import { isFieldRow, layTies, studsOf } from './lay-ties';
import { layProbed, layUnits } from './lay-units';
import { applyLookAlikes } from './look-alikes/apply';
import type { Plan } from './plan';

/** Units in the top course of a gable: each course from the eaves is a unit shorter than the one below. */
export const GABLE_TOP_UNITS = 3;

/** The course under a door's head: 2.0 to 2.1 m up (common practice). */
const DOOR_HEADS: Readonly<Record<RuleSetId, number>> = {
  canada: 31,
  ontario: 31,
  'united-states': 30,
  'united-kingdom': 28,
  'good-practice': 31,
};

/** Lays the sound wall of a plan, with its natural scatter and its look-alikes; spoils nothing. */
export function laySound(plan: Plan): Wall {
  const draft = draftOf(plan);
  const anchored = plan.masonry === 'anchored';
  const drafts = panelDraftsOf(plan);
  const storeysAbove = plan.rules === 'united-states' ? draft.chance.whole(0, 1) : 0;
  const units: Wall['units'][number][] = [];
  const openings: Opening[] = [];
  const supports: Support[] = [];
  const ties: Wall['ties'][number][] = [];
  const flashings: Flashing[] = [];
  const droppings: Droppings[] = [];
  const heads: Wall['heads'][number][] = [];
  const panels: Panel[] = [];
  for (const [index, each] of drafts.entries()) {
    const length = lengthOf(draft, each.modules);
    const opening = each.opening ? openingOf(draft, each, each.opening) : null;
    const leftEnd = each.corner === 'left' ? 'corner' : 'free';
    const rightEnd = each.corner === 'right' ? 'corner' : 'free';
    const free = [
      ...(leftEnd === 'free' ? (['left'] as const) : []),
      ...(rightEnd === 'free' ? (['right'] as const) : []),
    ];
    const studs = anchored ? studsOf(draft, each, opening) : [];
    const row = turnedFrom(units, each, layUnits(draft, each, opening));
    units.push(...row);
    if (opening) openings.push(opening);
    panels.push({
      id: each.id,
      length,
      courses: each.courses,
      plan:
        index === 0
          ? { leftX: 0, leftZ: 0, rightX: length, rightZ: 0 }
          : { leftX: panels[0]?.length ?? 0, leftZ: 0, rightX: panels[0]?.length ?? 0, rightZ: -length },
      leftEnd,
      rightEnd,
      profile: plan.lookAlikes.includes('raked-on-thick-veneer') ? 'raked' : 'concave',
      recess: plan.lookAlikes.includes('raked-on-thick-veneer') ? 6 : 0,
      gable: each.gableFrom === null ? null : { fromCourse: each.gableFrom, step: stepOf(draft) },
      studs,
    });
    if (!anchored) continue;
    ties.push(...layTies(draft, each, opening, studs, free));
    const carried = [layLedge(draft, each), ...(opening ? [layLintel(draft, opening, storeysAbove)] : [])];
    const every = plan.lookAlikes.includes('weep-openings') ? 2 : 3;
    const drainage = layDrainage(draft, row, carried, length, every);
    const { weeps } = drainage;
    supports.push(...carried);
    flashings.push(...drainage.flashings);
    droppings.push(...drainage.droppings);
    heads.push(...weeps, ...layProbed(draft, row, weeps));
  }
  const wall: Wall = {
    version: WALL_VERSION,
    kind: plan.kind,
    masonry: plan.masonry,
    finish: plan.finish,
    family: draft.out.family,
    bond: plan.bond,
    joint: draft.out.joint,
    gauge: draft.out.gauge,
    storeysAbove,
    cavity: anchored ? CAVITY : 0,
    panels,
    units,
    heads,
    openings,
    supports,
    ties,
    flashings,
    ...(anchored ? { droppings } : {}),
    batches: layBatches(draft, plan.courses),
    projections: [],
    tone: { mortar: plan.mortarTone, lot: draft.chance.whole(0, 3) },
  };
  return applyLookAlikes(wall, plan, draft.chance);
}

/** One unit shows on both faces of a corner: on the return it has the shade that it has on the panel before. */
function turnedFrom(before: readonly Unit[], { corner }: PanelDraft, row: readonly Unit[]): readonly Unit[] {
  if (corner !== 'left') return row;
  const lastOf = new Map(before.map((unit) => [unit.course, unit]));
  return row.map((unit) =>
    unit.position === 1 && unit.x < unit.length / 2
      ? { ...unit, shade: lastOf.get(unit.course)?.shade ?? unit.shade }
      : unit,
  );
}

function draftOf(plan: Plan): Draft {
  const out = settingOutFor(plan.rules, plan.masonry, plan.thinBed);
  const bed = out.gauge - out.family.height;
  return {
    plan,
    out,
    chance: chanceOf(plan.seed, 1),
    firstBed: bed + (plan.lookAlikes.includes('thick-first-bed') ? THICK_FIRST_BED : 0),
    module: out.family.length + out.joint,
  };
}

/** Added to the first bed as a look-alike: about 15 mm in all, where the first bed has a limit of its own near 20. */
const THICK_FIRST_BED = 5;

function panelDraftsOf(plan: Plan): readonly PanelDraft[] {
  const main = {
    id: 'A' as const,
    modules: plan.modules,
    courses: plan.courses,
    opening: null,
    gableFrom: null,
    corner: null,
  };
  const middle = Math.floor(plan.modules / 2);
  switch (plan.kind) {
    case 'plain-panel':
      return [main];
    case 'window-panel':
      return [
        {
          ...main,
          opening: {
            kind: 'window',
            leftModules: middle - 3,
            widthModules: 6,
            sillCourse: Math.floor(plan.courses * 0.3),
            headCourse: headCourseOf(plan, plan.courses - 7),
          },
        },
      ];
    case 'door-corner':
      return [
        {
          ...main,
          opening: {
            kind: 'door',
            leftModules: middle - 3,
            widthModules: 5,
            sillCourse: 0,
            headCourse: headCourseOf(plan, Math.min(DOOR_HEADS[plan.rules], plan.courses - 5)),
          },
          corner: 'right',
        },
        { ...main, id: 'B', modules: Math.floor(plan.modules / 2), corner: 'left' },
      ];
    case 'gable-end':
      // The top course is left three units long.
      return [{ ...main, gableFrom: plan.courses - plan.modules + GABLE_TOP_UNITS }];
    default: {
      const unknown: never = plan.kind;
      throw new RangeError(`wall kind ${String(unknown)} is not laid`);
    }
  }
}

/** The course under a head, as near as may be under the one wanted: no row of ties lies on the lintel or in a course that soldiers stand through. */
function headCourseOf({ soldiers, rules, courses }: Plan, wanted: number): number {
  const isRow = (course: number) => isFieldRow(rules, { courses, gableFrom: null }, course);
  const tieCut = (head: number) => isRow(head) || (soldiers && (isRow(head + 1) || isRow(head + 2)));
  let head = wanted;
  while (tieCut(head)) head -= 1;
  return head;
}
