import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { panelBox } from '../places';
import type { Check } from '../sight';

/** How far the mortar lies behind the face, where the veneer is too thin to be raked. */
export const rakedThinVeneer: Check = {
  id: 'raked-thin-veneer',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'rake-on-thin-veneer');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const survey of panels) {
      const { panel } = survey;
      see({
        limit,
        end: 'at most',
        measured: panel.recess,
        bound,
        at: panel.id,
        place: () => ({ parts: [panel.id], region: panelBox(survey) }),
      });
    }
  },
};
