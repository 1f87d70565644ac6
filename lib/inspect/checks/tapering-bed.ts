import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { bedId } from '../../wall/model';
import { bedBox, boxOf, joined } from '../places';
import type { Check } from '../sight';

/** The bed at one end of a unit less the bed at the other; pieces under half a unit are too short to judge. */
export const taperingBed: Check = {
  id: 'tapering-bed',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'bed-taper');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        if (each.bed === null || each.unit.length < wall.family.length / 2) continue;
        const at = bedId(each.unit.id);
        see({
          limit,
          end: 'at most',
          measured: Math.abs(each.bed.left - each.bed.right),
          bound,
          at,
          place: () => ({ parts: [at, each.unit.id], region: joined([bedBox(each), boxOf([each])]) }),
        });
      }
    }
  },
};
