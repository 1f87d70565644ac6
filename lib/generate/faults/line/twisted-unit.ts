import { snap } from '../../../units';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { boundIn, departureAt, pickFace, spotOf } from '../../spoil-input';

/** What feelers under a straightedge tell, and the grid, mm. */
const CLEAR = 0.5625;

/** Turns one unit about its middle: one end proud, the other back. */
export const twistedUnit: Fault = {
  id: 'twisted-unit',
  tolerated: 0.9,
  spoil: (input) => {
    const most = boundIn(input.rules, 'unit-twist');
    const unit = pickFace(input);
    const twist = snap(departureAt(most, input.severity, CLEAR)) * (input.chance.happens(50) ? 1 : -1);
    return { wall: withUnits(input.wall, new Map([[unit.id, { ...unit, twist }]])), taken: spotOf([unit]) };
  },
};
