import { slopeVerdict } from '../../../limits/bound';
import { heightOf } from '../../../wall/courses';
import { FACE_LEAST_UNITS, facePlaneOf } from '../../../wall/face-plane';
import type { Check } from '../../check';
import { panelBox } from '../../places';

/**
 * Each panel of at least 24 units: the upward slope of the plane of its face (bulge-or-hollow says which), over the height from the lowest
 * underside of course 1 to the highest top of the top course, both at the middles of units. Tried against `plumb` as a steady slope.
 *
 * A slope s over a length R is tried run by run, s times the lesser of the run and R against the run's value, and s·R against the overall value;
 * the worst ratio governs. A limit in proportion (so much in a run, a flat value beyond) is held against s·R. Parts: the panel.
 */
export const outOfPlumb: Check = {
  id: 'out-of-plumb',
  name: 'Out of plumb',
  alsoCalled: 'leaning wall, lean, tilted wall, off plumb, not upright',
  looksLike: 'The whole face leans out or back, from bottom to top.',
  whereToLook: 'Front view. Pick the whole panel and read how far its top leans out or back.',
  measuredBy: 'Hang a plumb line or hold a long level, and measure how far the face leans over its height.',
  whyItMatters:
    'A lean makes the gap behind the wall uneven and shifts the weight on its support. If it grows, the wall may fall.',
  putsRight:
    'In a new wall, the mason takes the leaning part down and lays it anew. In an old wall, keep people away. A licensed engineer decides what to do.',
  caughtAt: 'At every corner lead, and before each lift of scaffold goes up',
  mistakenFor: ['bulge-or-hollow', 'corner-not-square'],
  markedOn: ['panel'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'line-level-plumb',
  asks: { what: 'Lean, over the height the limit names', unit: 'mm' },
  tooNear: 1,
  measure: ({ panels }, limits, report) => {
    const limit = limits('plumb');
    if (limit === undefined) return;
    for (const survey of panels) {
      const { panel, placed } = survey;
      const plane = placed.length < FACE_LEAST_UNITS ? null : facePlaneOf(placed);
      if (plane === null) continue;
      const verdict = slopeVerdict(limit.bound, Math.abs(plane.up), heightOf(survey));
      report({
        limit,
        end: 'at most',
        measured: verdict.measured,
        bound: verdict.limit,
        at: panel.id,
        place: () => ({ parts: [panel.id], region: panelBox(survey) }),
      });
    }
  },
};
