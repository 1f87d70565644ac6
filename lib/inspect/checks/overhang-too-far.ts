import { governingOverhang } from '../../limits/bound';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** How far the face of the units stands past the edge of what they rest on; the stricter of the two rules governs. */
export const overhangTooFar: Check = {
  id: 'overhang-too-far',
  measure: ({ wall, panels }, rules, see) => {
    if (wall.masonry !== 'anchored') return;
    const governing = governingOverhang(rules, wall.family.depth);
    if (governing === undefined) return;
    const { limit, bound } = governing;
    for (const { placed, supports } of panels) {
      for (const support of supports) {
        if (support.material === 'wood') continue;
        const resting = placed.filter((each) => each.support === support);
        if (resting.length === 0) continue;
        see({
          limit,
          end: 'at most',
          measured:
            resting.reduce((most, { unit }) => Math.max(most, unit.set), Number.NEGATIVE_INFINITY) -
            support.front,
          bound,
          at: support.id,
          place: () => ({
            parts: [support.id, ...resting.map(({ unit }) => unit.id)],
            region: boxOf(resting),
          }),
        });
      }
    }
  },
};
