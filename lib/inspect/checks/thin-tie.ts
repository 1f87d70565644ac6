import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Check } from '../sight';
import { tiePlace } from '../tie-places';

/** Thickness of a strap, and its width where the thickness will do. */
export const thinTie: Check = {
  id: 'thin-tie',
  measure: ({ wall }, rules, see) => {
    const thickness = limitOf(rules, 'tie-thickness');
    const width = limitOf(rules, 'tie-width');
    if (thickness === undefined || width === undefined) return;
    const thinnest = boundAt(thickness, {});
    const narrowest = boundAt(width, {});
    for (const tie of wall.ties) {
      const thin = tie.thickness < thinnest || tie.width >= narrowest;
      see({
        limit: thin ? thickness : width,
        end: 'at least',
        measured: thin ? tie.thickness : tie.width,
        bound: thin ? thinnest : narrowest,
        at: tie.id,
        place: () => tiePlace(tie),
      });
    }
  },
};
