import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { boundIn, pickFace, spotOf } from '../../spoil-input';

/** Turns one unit about its middle: one end proud, the other back. */
export const twistedUnit: Fault = {
  id: 'twisted-unit',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: (input) => {
    const most = boundIn(input.rules, 'unit-twist');
    const unit = pickFace(input);
    const twist = snap(most * input.severity) * (input.chance.happens(50) ? 1 : -1);
    return { wall: withUnits(input.wall, new Map([[unit.id, { ...unit, twist }]])), taken: spotOf([unit]) };
  },
};
