import { angleVerdict, boundAt } from '../../../limits/bound';
import type { Limits } from '../../../limits/limit';
import type { Angle, Opening, Wall } from '../../../wall/model';
import { type Check, type Measurement, passes } from '../../check';
import { lintelBox, lintelsOf } from './lintels';

/**
 * Anchored walls, each lintel of steel angle with each opening it lies over. Held against the table `angle-size`, in the column for the depth of
 * the family (the least that is deep enough) or for the storeys above. The angle serves when some row carries the span and is no larger than it
 * in both legs and in thickness. Otherwise it is held against the first row that carries the span, by the worst of the three in proportion; where
 * no row carries it, the span is held against the longest of the column, 0 where the table has no such column.
 *
 * Where the rule set has no table: the thickness against `angle-thickness` and the flat leg against `angle-leg`, the worse of the two.
 * Parts: the lintel, the opening.
 */
export const weakAngle: Check = {
  id: 'weak-angle',
  name: 'Angle too small',
  alsoCalled:
    'undersized lintel, lintel too light, light steel, angle iron too thin, narrow leg, undersized shelf angle',
  looksLike: 'The steel over an opening is thin, or its leg is narrow, for the width it spans.',
  whereToLook: 'Section through the lintel. On a wall that has moved, the front view shows a sag.',
  measuredBy:
    'Measure both legs and the thickness of the steel, and the width of the opening, and read the table.',
  whyItMatters: 'Weak steel bends and twists under the weight. The wall over it cracks and can drop.',
  putsRight:
    'Keep people away from the opening. A licensed engineer decides what steel is needed. A contractor props the wall and changes it.',
  caughtAt: 'When the lintel is set, before brick goes over it',
  mistakenFor: ['hidden-angle', 'short-lintel-bearing'],
  ofPanel: ['no-lintel', 'short-lintel-bearing'],
  markedOn: ['support'],
  hazard: 'could fall',
  reach: 'in sight',
  lesson: 'openings',
  asks: { what: 'The size that is too small', unit: 'mm' },
  tooNear: 0,
  measure: ({ wall, panels }, limits, report) => {
    if (wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      for (const { lintel, opening } of lintelsOf(survey, wall.gauge)) {
        const { angle } = lintel;
        const size = angle && (byTable(angle, opening, wall, limits) ?? byLeg(angle, limits));
        if (!size) continue;
        report({
          ...size,
          unit: 'mm',
          at: lintel.id,
          place: () => ({ parts: [lintel.id, opening.id], region: lintelBox(lintel, wall.gauge) }),
        });
      }
    }
  },
};

type Size = Pick<Measurement, 'limit' | 'end' | 'measured' | 'bound'>;

function byTable(angle: Angle, opening: Opening, wall: Wall, limits: Limits): Size | null {
  const limit = limits('angle-size');
  if (limit?.bound.form !== 'angle-table') return null;
  const at = { depth: wall.family.depth, storeys: wall.storeysAbove };
  const verdict = angleVerdict(limit.bound, angle, opening.width, at);
  return { limit, end: verdict.end, measured: verdict.measured, bound: verdict.limit };
}

function byLeg(angle: Angle, limits: Limits): Size | null {
  const leg = limits('angle-leg');
  const thickness = limits('angle-thickness');
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
