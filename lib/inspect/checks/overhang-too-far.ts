import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** How far the face of the units stands past the edge of what they rest on; the stricter of the two rules governs. */
export const overhangTooFar: Check = {
  id: 'overhang-too-far',
  measure: ({ wall, panels }, rules, see) => {
    if (wall.masonry !== 'anchored') return;
    const { depth } = wall.family;
    const share = limitOf(rules, 'overhang-share');
    const fixed = limitOf(rules, 'overhang-fixed');
    const stricter =
      share && fixed
        ? boundAt(fixed, { depth }) < boundAt(share, { depth })
          ? fixed
          : share
        : (share ?? fixed);
    if (stricter === undefined) return;
    const bound = boundAt(stricter, { depth });
    for (const { placed, supports } of panels) {
      for (const support of supports) {
        if (support.material === 'wood') continue;
        const resting = placed.filter((each) => each.support === support);
        if (resting.length === 0) continue;
        see({
          limit: stricter,
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
