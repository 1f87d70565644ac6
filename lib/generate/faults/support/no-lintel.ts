import { type Fault, WITH_OPENING } from '../../fault';
import { lintelLeft, replaceSupport, supportSpot } from './support-changes';

/** Leaves a lintel out: the units over the opening stand on the frame, or on nothing. */
export const noLintel: Fault = {
  id: 'no-lintel',
  kinds: WITH_OPENING,
  masonry: 'anchored',
  spoil: (input) => {
    const { wall } = input;
    const lintel = lintelLeft(input);
    return { wall: replaceSupport(wall, lintel, []), taken: supportSpot(lintel) };
  },
};
