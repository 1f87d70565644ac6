import type { RuleSetId } from '../../limits/limit';
import type { Unit, Wall, WallKind } from '../../wall/model';
import { courseId, courseOf } from '../../wall/part-id';
import { chanceOf } from '../chance';
import { layPlan } from '../generate';
import { PLAIN } from '../plan';
import { planWith } from '../planner';
import { isAmongWhole, pickUnit, type Spot, spotOf } from '../spoil-input';
import type { Places } from './departure';

/** Always the same wall of a kind: it is what is done to it that counts. */
const SEED = 7;

/** Ties and tickets are well within their limits. */
const TRUE_UP_TO = 0.5;

/** Sand to one of cement and lime in a mixing by the book: within every rule set's mixes. */
const TRUE_SAND = 2.75;

/**
 * A wall laid true, to be adjusted: without the natural scatter of faces, levels and joints, so that what is set is what is
 * measured. Undersides lie on the gauge from a first bed like the others.
 */
export function layTrue(kind: WallKind, masonry: 'anchored' | 'adhered', rules: RuleSetId): Wall {
  const plan = planWith(kind, masonry, rules, [], SEED);
  const wall = layPlan({
    ...plan,
    ...PLAIN,
    bond: 'running',
    lookAlikes: [],
    tolerated: [],
    soundUpTo: TRUE_UP_TO,
    mortarTone: 0,
    mirrored: false,
  });
  const bed = wall.gauge - wall.family.height;
  return {
    ...wall,
    batches: wall.batches.map((batch) => ({ ...batch, sand: TRUE_SAND * (batch.portland + batch.lime) })),
    units: wall.units.map((unit, at) => ({
      ...unit,
      length: trueLength(unit, wall.units[at + 1], wall),
      y: bed + (unit.course - 1) * wall.gauge,
      height: wall.family.height,
      fall: 0,
      twist: 0,
      lean: 0,
      set: 0,
      ...(unit.back ? { back: [{ x: 0, y: 0, width: wall.family.length, height: wall.family.height }] } : {}),
    })),
  };
}

/** As far as the next unit of the course, less a joint; as laid where none is beside it. */
function trueLength(unit: Unit, next: Unit | undefined, { joint, family }: Wall): number {
  if (next?.panel !== unit.panel || next.course !== unit.course) return unit.length;
  const gap = next.x - unit.x - unit.length;
  return gap < family.length / 2 ? next.x - joint - unit.x : unit.length;
}

/** A unit for each departure that is of one unit. @throws NoRoom where the wall is too small for all of them. */
export function placesOn(wall: Wall, rules: RuleSetId): Places {
  const chance = chanceOf(SEED, 3);
  const taken: Spot[] = [];
  const amongWhole = isAmongWhole(wall);
  const weeps = new Set(wall.heads.map(({ joint }) => courseOf(joint)));
  const next = () => {
    const unit = pickUnit({ wall, rules, severity: 1, chance, taken }, true, (each) => {
      const { panel, course } = each;
      return panel === 'A' && course > 2 && !weeps.has(courseId(panel, course)) && amongWhole(each);
    });
    taken.push(spotOf([unit], true));
    return unit;
  };
  return { head: next(), taper: next(), fill: next(), twist: next(), set: next() };
}
