import { type Fault, WITH_OPENING } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { replaceSupport, supportSpot } from './support-changes';

/** Leaves a lintel out: the units over the opening stand on the frame, or on nothing. */
export const noLintel: Fault = {
  id: 'no-lintel',
  kinds: WITH_OPENING,
  masonry: ['anchored'],
  most: 4,
  spoil: ({ wall, taken }) => {
    const lintel = wall.supports.find(
      ({ kind, id }) => kind === 'lintel' && !taken.some(({ panel }) => panel === id),
    );
    if (lintel === undefined) throw new NoRoom('no lintel left');
    return { wall: replaceSupport(wall, lintel, []), taken: supportSpot(lintel) };
  },
};
