import { snap } from '../../../units';
import { WALL_KINDS } from '../../../wall/model';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { boundIn, pickUnit, spotOf } from '../../spoil-input';

/** Tips one unit about its middle, so that its bed keeps its mean and loses its evenness. */
export const taperingBed: Fault = {
  id: 'tapering-bed',
  kinds: WALL_KINDS,
  masonry: ['anchored', 'adhered'],
  most: 3.2,
  needs: ['half lap'],
  spoil: (input) => {
    const most = boundIn(input.rules, 'bed-taper');
    const unit = pickUnit(input);
    const taper = snap(most * Math.min(input.severity, 3.2)) * (input.chance.happens(50) ? 1 : -1);
    const tipped = { ...unit, fall: taper, y: snap(unit.y + taper / 2) };
    return { wall: withUnits(input.wall, new Map([[unit.id, tipped]])), taken: spotOf([unit]) };
  },
};
