import { limitOf } from '../../limits/limits';
import { lintelsOf } from '../openings';
import { boxOf } from '../places';
import type { Check } from '../sight';

/** Masonry over an opening with nothing under it. */
export const noLintel: Check = {
  id: 'no-lintel',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'lintel-present');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const spanned = lintelsOf(survey, wall.gauge).map(({ opening }) => opening.id);
      for (const opening of survey.openings) {
        const head = opening.y + opening.height;
        const above = survey.placed.filter(
          ({ unit }) =>
            unit.y >= head && unit.x < opening.x + opening.width && unit.x + unit.length > opening.x,
        );
        if (above.length === 0) continue;
        const course = above.reduce(
          (least, { unit }) => Math.min(least, unit.course),
          Number.POSITIVE_INFINITY,
        );
        const lowest = above.filter(({ unit }) => unit.course === course);
        see({
          limit,
          end: 'at least',
          measured: spanned.includes(opening.id) ? 1 : 0,
          bound: 1,
          at: opening.id,
          place: () => ({ parts: [opening.id, ...lowest.map(({ unit }) => unit.id)], region: boxOf(lowest) }),
        });
      }
    }
  },
};
