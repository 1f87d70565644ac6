import { snap } from '../../../units';
import { type Fault, WITH_OPENING } from '../../fault';
import { boundIn, NoRoom } from '../../spoil-input';
import { lintelLeft, replaceSupport, supportSpot } from './support-changes';

/** Cuts one end of a lintel short. */
export const shortLintelBearing: Fault = {
  id: 'short-lintel-bearing',
  kinds: WITH_OPENING,
  masonry: ['anchored'],
  most: 4,
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const lintel = lintelLeft(input);
    const opening = wall.openings.find(({ id }) => id === lintel.opening);
    if (opening === undefined) throw new NoRoom('no lintel left');
    const bearing = snap(boundIn(rules, 'lintel-bearing', { span: opening.width }) / severity);
    const cut = chance.happens(50)
      ? { ...lintel, fromX: opening.x - bearing }
      : { ...lintel, toX: opening.x + opening.width + bearing };
    return { wall: replaceSupport(wall, lintel, [cut]), taken: supportSpot(lintel) };
  },
};
