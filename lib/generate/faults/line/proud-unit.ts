import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { boundIn, pickFace, spotOf } from '../../spoil-input';

/** Sets one unit proud of its neighbours, or back. */
export const proudUnit: Fault = {
  id: 'proud-unit',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: (input) => {
    const most = boundIn(input.rules, 'unit-set');
    const unit = pickFace(input);
    // Half a millimetre more, since the neighbours are not quite in the face either.
    const off = snap(most * input.severity + 0.5) * (input.chance.happens(60) ? 1 : -1);
    return {
      wall: withUnits(input.wall, new Map([[unit.id, { ...unit, set: unit.set + off }]])),
      taken: spotOf([unit]),
    };
  },
};
