import { boundAt } from '../../../limits/bound';
import { limitOf } from '../../../limits/limits';
import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { NoRoom, pickUnit, spotOf } from '../../spoil-input';

/** Tips one unit about its middle, so that its bed keeps its mean and loses its evenness. */
export const taperingBed: Fault = {
  id: 'tapering-bed',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 3.2,
  needs: ['half lap'],
  spoil: (input) => {
    const limit = limitOf(input.rules, 'bed-taper');
    if (limit === undefined) throw new NoRoom('no taper limit');
    const unit = pickUnit(input);
    const taper =
      snap(boundAt(limit, {}) * Math.min(input.severity, 3.2)) * (input.chance.happens(50) ? 1 : -1);
    const tipped = { ...unit, fall: taper, y: snap(unit.y + taper / 2) };
    return { wall: withUnits(input.wall, new Map([[unit.id, tipped]])), taken: spotOf([unit]) };
  },
};
