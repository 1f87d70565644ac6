import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { NoRoom, pickFace, spotOf } from '../../spoil-input';

/** Turns one unit about its middle: one end proud, the other back. */
export const twistedUnit: Fault = {
  id: 'twisted-unit',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 4,
  spoil: (input) => {
    const limit = limitOf(input.rules, 'unit-twist');
    if (limit === undefined) throw new NoRoom('no twist limit');
    const unit = pickFace(input);
    const twist = snap(boundAt(limit, {}) * input.severity) * (input.chance.happens(50) ? 1 : -1);
    return { wall: withUnits(input.wall, new Map([[unit.id, { ...unit, twist }]])), taken: spotOf([unit]) };
  },
};
