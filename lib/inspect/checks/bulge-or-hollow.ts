import { departureBound } from '../../limits/departure-bound';
import { limitOf } from '../../limits/limits';
import { facePlaneOf, padsOf } from '../../wall/face-plane';
import { boxOf } from '../places';
import type { Check } from '../sight';

const LEAST_UNITS = 24;

/** How far the face stands off its own best plane, on pads of units. */
export const bulgeOrHollow: Check = {
  id: 'bulge-or-hollow',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'face-line');
    if (limit === undefined) return;
    for (const survey of panels) {
      const { panel, placed } = survey;
      const plane = placed.length < LEAST_UNITS ? null : facePlaneOf(placed);
      if (plane === null) continue;
      const pads = padsOf(survey, plane);
      const most = pads.reduce(
        (greatest, { off }) => (off === null ? greatest : Math.max(greatest, Math.abs(off))),
        0,
      );
      see({
        limit,
        end: 'at most',
        measured: most,
        bound: departureBound(limit.bound, boxOf(placed).width),
        at: panel.id,
        place: () => ({
          parts: [panel.id],
          region: boxOf(
            pads.filter(({ off }) => off !== null && Math.abs(off) > most / 2).map((pad) => pad.placed),
          ),
        }),
      });
    }
  },
};
