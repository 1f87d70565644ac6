import { snap } from '../../../units';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import {
  amongNeighbours,
  boundIn,
  departureAt,
  isAmongWhole,
  NoRoom,
  pickUnit,
  spotOf,
} from '../../spoil-input';

/** What a joint gauge at both ends of a unit tells, mm. */
const CLEAR = 0.625;

/** Tips one unit about its middle, so that its bed keeps its mean and loses its evenness. */
export const taperingBed: Fault = {
  id: 'tapering-bed',
  most: 3.2,
  tolerated: 0.9,
  needs: ['half lap'],
  spoil: (input) => {
    const most = boundIn(input.rules, 'bed-taper');
    // Not at the end of a course, which would be off level by it; and stuck-on units of the first course lie on nothing.
    const amongWhole = isAmongWhole(input.wall);
    const lowest = input.wall.masonry === 'anchored' ? 1 : 2;
    const unit = pickUnit(input, true, (each) => each.course >= lowest && amongWhole(each));
    const { bed } = amongNeighbours(input.wall, unit);
    if (bed === null) throw new NoRoom('nothing below');
    const taper = departureAt(most, input.severity, CLEAR) * (input.chance.happens(50) ? 1 : -1);
    const fall = snap(unit.fall + taper - (bed.left - bed.right));
    const tipped = { ...unit, fall, y: snap(unit.y + (fall - unit.fall) / 2) };
    return { wall: withUnits(input.wall, new Map([[unit.id, tipped]])), taken: spotOf([unit], true) };
  },
};
