import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { lintelBox, lintelsOf } from '../openings';
import type { Check } from '../sight';

/** The shorter of the two bearings of a lintel, past the jambs. */
export const shortLintelBearing: Check = {
  id: 'short-lintel-bearing',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'lintel-bearing');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      for (const { lintel, opening } of lintelsOf(survey, wall.gauge)) {
        see({
          limit,
          end: 'at least',
          measured: Math.min(opening.x - lintel.fromX, lintel.toX - opening.x - opening.width),
          bound: boundAt(limit, { span: opening.width }),
          at: lintel.id,
          place: () => ({ parts: [lintel.id, opening.id], region: lintelBox(lintel, wall.gauge) }),
        });
      }
    }
  },
};
