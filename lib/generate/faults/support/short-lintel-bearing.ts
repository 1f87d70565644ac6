import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import { type Fault, WITH_OPENING } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { replaceSupport, supportSpot } from './support-changes';

/** Cuts one end of a lintel short. */
export const shortLintelBearing: Fault = {
  id: 'short-lintel-bearing',
  kinds: WITH_OPENING,
  masonry: ['anchored'],
  most: 4,
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const limit = limitOf(rules, 'lintel-bearing');
    const lintel = wall.supports.find(
      ({ kind, id }) => kind === 'lintel' && !taken.some(({ panel }) => panel === id),
    );
    const opening = wall.openings.find(({ id }) => id === lintel?.opening);
    if (limit === undefined || lintel === undefined || opening === undefined)
      throw new NoRoom('no lintel left');
    const bearing = snap(boundAt(limit, { span: opening.width }) / severity);
    const cut = chance.happens(50)
      ? { ...lintel, fromX: opening.x - bearing }
      : { ...lintel, toX: opening.x + opening.width + bearing };
    return { wall: replaceSupport(wall, lintel, [cut]), taken: supportSpot(lintel) };
  },
};
