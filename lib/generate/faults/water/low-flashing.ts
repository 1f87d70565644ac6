import type { Fault } from '../../fault';
import { boundIn, valueAt } from '../../spoil-input';
import { pickFlashing, withShape } from './flashing-changes';

/** What a tape tells, mm. */
const CLEAR = 3;

/** One flashing too narrow for its place: it goes too little up the backing. */
export const lowFlashing: Fault = {
  id: 'low-flashing',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const up = Math.round(valueAt(boundIn(input.rules, 'flashing-upstand'), input.severity, CLEAR));
    return withShape(input.wall, pickFlashing(input, 'back'), 'back', { up });
  },
};
