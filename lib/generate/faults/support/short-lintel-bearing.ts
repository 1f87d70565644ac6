import { snap } from '../../../units';
import { type Fault, WITH_OPENING } from '../../fault';
import { boundIn, NoRoom, valueAt } from '../../spoil-input';
import { lintelLeft, replaceSupport, supportSpot } from './support-changes';

/** What a tape tells, mm. */
const CLEAR = 2.25;

/** Cuts one end of a lintel short. */
export const shortLintelBearing: Fault = {
  id: 'short-lintel-bearing',
  kinds: WITH_OPENING,
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: (input) => {
    const { wall, rules, severity, chance } = input;
    const lintel = lintelLeft(input);
    const opening = wall.openings.find(({ id }) => id === lintel.opening);
    if (opening === undefined) throw new NoRoom('no lintel left');
    const bearing = snap(valueAt(boundIn(rules, 'lintel-bearing', { span: opening.width }), severity, CLEAR));
    const [left, right] = [opening.x - bearing, opening.x + opening.width + bearing];
    const cut = chance.happens(50)
      ? { ...lintel, fromX: Math.max(lintel.fromX, left) }
      : { ...lintel, toX: Math.min(lintel.toX, right) };
    return { wall: replaceSupport(wall, lintel, [cut]), taken: supportSpot(lintel) };
  },
};
