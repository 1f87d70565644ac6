import { angleVerdict, boundAt } from '../../limits/bound';
import type { RuleSetId } from '../../limits/limit';
import { limitOf } from '../../limits/limits';
import type { Angle, Opening, Wall } from '../../wall/model';
import { lintelBox, lintelsOf } from '../openings';
import { type Check, passes, type Sight } from '../sight';

/** The size of a steel angle against the table of the rule set for the opening it spans; where there is no table, its leg and thickness. */
export const weakAngle: Check = {
  id: 'weak-angle',
  measure: ({ wall, panels }, rules, see) => {
    if (wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      for (const { lintel, opening } of lintelsOf(survey, wall.gauge)) {
        const { angle } = lintel;
        const size = angle && (byTable(angle, opening, wall, rules) ?? byLeg(angle, rules));
        if (!size) continue;
        see({
          ...size,
          unit: 'mm',
          at: lintel.id,
          place: () => ({ parts: [lintel.id, opening.id], region: lintelBox(lintel, wall.gauge) }),
        });
      }
    }
  },
};

type Size = Pick<Sight, 'limit' | 'end' | 'measured' | 'bound'>;

function byTable(angle: Angle, opening: Opening, wall: Wall, rules: RuleSetId): Size | null {
  const limit = limitOf(rules, 'angle-size');
  if (limit?.bound.form !== 'angle-table') return null;
  const at = { depth: wall.family.depth, storeys: wall.storeysAbove };
  const verdict = angleVerdict(limit.bound, angle, opening.width, at);
  return { limit, end: verdict.end, measured: verdict.measured, bound: verdict.limit };
}

function byLeg(angle: Angle, rules: RuleSetId): Size | null {
  const leg = limitOf(rules, 'angle-leg');
  const thickness = limitOf(rules, 'angle-thickness');
  if (leg === undefined || thickness === undefined) return null;
  const byLegLength: Size = {
    limit: leg,
    end: 'at least',
    measured: angle.horizontal,
    bound: boundAt(leg, {}),
  };
  const byThickness: Size = {
    limit: thickness,
    end: 'at least',
    measured: angle.thickness,
    bound: boundAt(thickness, {}),
  };
  return passes(byThickness) ||
    byLegLength.measured / byLegLength.bound < byThickness.measured / byThickness.bound
    ? byLegLength
    : byThickness;
}
