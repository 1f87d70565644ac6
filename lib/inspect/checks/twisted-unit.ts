import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** How far one end of a unit stands proud of the other. */
export const twistedUnit: Check = {
  id: 'twisted-unit',
  measure: ({ panels }, rules, see) => {
    const limit = limitOf(rules, 'unit-twist');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const { placed } of panels) {
      for (const each of placed) {
        see({
          limit,
          end: 'at most',
          measured: Math.abs(each.unit.twist),
          bound,
          at: each.unit.id,
          place: () => ({ parts: [each.unit.id], region: boxOf([each]) }),
        });
      }
    }
  },
};
