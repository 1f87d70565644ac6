import { boundAt, spacingVerdict } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { tieEdgesOf, tieGapsOf } from '../../wall/tie-field';
import type { Check, Sight } from '../sight';
import { passes, severityOf } from '../sight';

/** Spacing of ties up each stud and across to the next, both and (where the rules ask) the area each tie holds. */
export const tiesTooFarApart: Check = {
  id: 'ties-too-far-apart',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'tie-spacing');
    const reach = limitOf(rules, 'tie-edge-distance');
    if (limit === undefined || wall.masonry !== 'anchored') return;
    for (const survey of panels) {
      const { panel } = survey;
      const gaps = tieGapsOf(survey, tieEdgesOf(survey), reach ? boundAt(reach, {}) : 0);
      let worst: Sight | null = null;
      for (const gap of gaps) {
        const verdict = spacingVerdict(limit.bound, gap.vertical, gap.horizontal);
        const sight: Sight = {
          limit,
          end: 'at most',
          measured: verdict.measured,
          bound: verdict.limit,
          unit: 'mm',
          at: panel.id,
          place: () => ({
            parts: [panel.id],
            region: {
              panel: panel.id,
              x: gap.leftX,
              y: gap.lower.y,
              width: gap.rightX - gap.leftX,
              height: gap.vertical,
            },
          }),
        };
        const worse = worst === null || severityOf(sight) > severityOf(worst);
        if (worst === null || (passes(worst) && !passes(sight)) || (worse && passes(worst) === passes(sight))) {
          worst = sight;
        }
      }
      if (worst !== null) see(worst);
    }
  },
};
