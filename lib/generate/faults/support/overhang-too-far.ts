import { overhangBound } from '../../../limits/bound';
import { limitsUnder } from '../../../limits/limits';
import { snap } from '../../../units';
import { type Support, WALL_KINDS } from '../../../wall/model';
import type { Fault } from '../../fault';
import { NoRoom } from '../../spoil-input';
import { replaceSupport, supportSpot } from './support-changes';

/** A veneer further out than this share of its thickness is not believable. */
const MOST_SHARE = 0.6;

/** Draws one ledge back under the wall, or sets one lintel too far in. */
export const overhangTooFar: Fault = {
  id: 'overhang-too-far',
  kinds: WALL_KINDS,
  masonry: ['anchored'],
  most: 4,
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const { depth } = wall.family;
    const free = wall.supports.filter(
      (support) => !taken.some(({ panel }) => panel === supportSpot(support).panel),
    );
    if (free.length === 0) throw new NoRoom('no support left');
    const support = chance.pick(free);
    const overhang = snap(Math.min(overhangBound(limitsUnder(rules), depth) * severity, depth * MOST_SHARE));
    const moved: Support = { ...support, front: -overhang, back: support.back - support.front - overhang };
    return { wall: replaceSupport(wall, support, [moved]), taken: supportSpot(support) };
  },
};
