import type { Condition, Unit, Wall } from '../../wall/model';
import type { Chance } from '../chance';
import { withUnits } from '../draft';
import type { Plan } from '../plan';

/** Share of units that show a hairline, a chip or a smear, in a hundred. */
const HAIRLINE_PERCENT = 5;
const CHIP_PERCENT = 6;
const SMEAR_PERCENT = 4;
/** Bloom lies on the lowest courses, where water has been. */
const BLOOM_COURSES = 5;
/** How far a patterned unit is drawn proud, mm. */
const PATTERN_PROUD = 12;

/** Look-alikes that are put on a laid wall: hairlines, bloom, chips, smears, a pattern of proud units by the drawing. Others are chosen while laying. */
export function applyLookAlikes(wall: Wall, plan: Plan, chance: Chance): Wall {
  let applied = wall;
  if (plan.lookAlikes.includes('hairline-cracks')) {
    applied = conditioned(applied, 'hairline', () => chance.happens(HAIRLINE_PERCENT));
  }
  if (plan.lookAlikes.includes('efflorescence')) {
    applied = conditioned(applied, 'bloom', (unit) => unit.course <= BLOOM_COURSES && chance.happens(40));
  }
  if (plan.lookAlikes.includes('chipped-corners')) {
    applied = conditioned(applied, 'chip', () => chance.happens(CHIP_PERCENT));
  }
  if (plan.lookAlikes.includes('mortar-smears')) {
    applied = conditioned(applied, 'smear', () => chance.happens(SMEAR_PERCENT));
  }
  if (plan.lookAlikes.includes('projecting-pattern')) applied = patterned(applied, plan);
  return applied;
}

function conditioned(wall: Wall, condition: Condition, shows: (unit: Unit) => boolean): Wall {
  return {
    ...wall,
    units: wall.units.map((unit) =>
      unit.condition === 'sound' && shows(unit) ? { ...unit, condition } : unit,
    ),
  };
}

/** Every third unit of one course of panel A, a few courses below the top. */
function patterned(wall: Wall, plan: Plan): Wall {
  const course = plan.courses - 3;
  const chosen = wall.units.filter(
    (unit) =>
      unit.panel === 'A' && unit.course === course && unit.kind === 'stretcher' && unit.position % 3 === 2,
  );
  const changed = new Map(chosen.map((unit) => [unit.id, { ...unit, set: unit.set + PATTERN_PROUD }]));
  return { ...withUnits(wall, changed), projections: [{ units: [...changed.keys()], by: PATTERN_PROUD }] };
}
