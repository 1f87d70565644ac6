import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import type { Check } from '../sight';
import { tiePlace } from '../tie-places';

/** How far a tie reaches into the bed, from the back of the veneer. */
export const shallowTie: Check = {
  id: 'shallow-tie',
  measure: ({ wall }, rules, see) => {
    const limit = limitOf(rules, 'tie-embedment');
    if (limit === undefined) return;
    const bound = boundAt(limit, { depth: wall.family.depth });
    for (const tie of wall.ties) {
      see({ limit, end: 'at least', measured: tie.embedment, bound, at: tie.id, place: () => tiePlace(tie) });
    }
  },
};
