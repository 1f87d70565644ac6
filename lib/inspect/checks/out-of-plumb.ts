import { slopeVerdict } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { facePlaneOf } from '../../wall/face-plane';
import { boxOf, panelBox } from '../places';
import type { Check } from '../sight';

const LEAST_UNITS = 24;

/** Lean of the best plane of the face over the height of the panel. */
export const outOfPlumb: Check = {
  id: 'out-of-plumb',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'plumb');
    if (limit === undefined) return;
    for (const survey of panels) {
      const { panel, placed } = survey;
      const plane = placed.length < LEAST_UNITS ? null : facePlaneOf(placed);
      if (plane === null) continue;
      const verdict = slopeVerdict(limit.bound, Math.abs(plane.up), boxOf(placed).height);
      see({
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
