import { medianOf } from '../../../geometry/interval';
import { snap } from '../../../units';
import { withUnits } from '../../draft';
import type { Fault } from '../../fault';
import { amongNeighbours, boundIn, departureAt, NoRoom, pickFace, spotOf } from '../../spoil-input';

/** A unit with fewer neighbours stands off nothing. */
const LEAST_NEIGHBOURS = 3;
/** What feelers under a straightedge tell, and the grid, mm. */
const CLEAR = 0.625;

/** Sets one unit proud of its neighbours, or back. */
export const proudUnit: Fault = {
  id: 'proud-unit',
  tolerated: 0.9,
  spoil: (input) => {
    const most = boundIn(input.rules, 'unit-set');
    const unit = pickFace(input);
    const placed = amongNeighbours(input.wall, unit);
    const beside = [placed.left, placed.right, ...placed.below, ...placed.above].flatMap((each) =>
      each === null ? [] : [each.unit.set],
    );
    if (beside.length < LEAST_NEIGHBOURS) throw new NoRoom('too few neighbours');
    const off = departureAt(most, input.severity, CLEAR) * (input.chance.happens(60) ? 1 : -1);
    const set = snap(medianOf(beside) + off);
    return {
      wall: withUnits(input.wall, new Map([[unit.id, { ...unit, set }]])),
      taken: spotOf([unit]),
    };
  },
};
