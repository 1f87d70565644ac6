import { overhangBound } from '../../../limits/bound';
import { limitsUnder } from '../../../limits/limits';
import { snap } from '../../../units';
import type { Support } from '../../../wall/model';
import type { Fault } from '../../fault';
import { departureAt, NoRoom, restsOn } from '../../spoil-input';
import { replaceSupport, supportSpot } from './support-changes';

/** A veneer further out than this share of its thickness is not believable. */
const MOST_SHARE = 0.6;
/** What a tape tells, mm. */
const CLEAR = 1.25;

/** Draws one ledge back under the wall, or sets one lintel too far in. */
export const overhangTooFar: Fault = {
  id: 'overhang-too-far',
  masonry: 'anchored',
  tolerated: 0.95,
  spoil: ({ wall, rules, severity, chance, taken }) => {
    const { depth } = wall.family;
    const free = wall.supports.filter(
      (support) => !taken.some(({ panel }) => panel === supportSpot(support).panel),
    );
    if (free.length === 0) throw new NoRoom('no support left');
    const support = chance.pick(free);
    const bound = overhangBound(limitsUnder(rules), depth);
    const overhang = Math.min(departureAt(bound, severity, CLEAR), depth * MOST_SHARE);
    const foremost = Math.max(
      ...wall.units.filter((unit) => restsOn(unit, support, wall.gauge)).map(({ set }) => set),
    );
    if (!Number.isFinite(foremost)) throw new NoRoom('nothing rests on it');
    const front = snap(foremost - overhang);
    const moved: Support = { ...support, front, back: support.back + front - support.front };
    return { wall: replaceSupport(wall, support, [moved]), taken: supportSpot(support) };
  },
};
