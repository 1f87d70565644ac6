import { boundAt } from '../../limits/bound';
import type { Limit } from '../../limits/limit';
import type { Mm } from '../../units';
import type { FlashingShape } from '../../wall/flashing';
import type { Wall } from '../../wall/model';
import { ledgeId } from '../../wall/part-id';
import { type Departure, type Fitted, twice } from './departure';

const TAPE = 1;
const LEDGE = ledgeId('A');

/** The flashing at the foot of the wall. */
export const WATER_DEPARTURES: readonly Departure[] = [
  {
    id: 'flashing-up',
    family: 'Water',
    name: 'Flashing up the backing',
    checks: ['low-flashing'],
    unit: 'mm',
    limit: 'flashing-upstand',
    fit: (wall, limit) =>
      fitted(
        wall,
        limit,
        ({ up }) => up,
        (up) => ({ up }),
      ),
  },
  {
    id: 'flashing-past',
    family: 'Water',
    name: 'Flashing past the edge of the ledge',
    checks: ['short-flashing'],
    unit: 'mm',
    limit: 'flashing-past-face',
    fit: (wall, limit) => {
      const edge = wall.supports.find(({ id }) => id === LEDGE)?.front ?? 0;
      return fitted(
        wall,
        limit,
        ({ front }) => front - edge,
        (past) => ({ front: edge + past }),
      );
    },
  },
];

/** A measure of the flashing on the ledge of the main panel, and what sets it. */
function fitted(
  wall: Wall,
  limit: Limit,
  measured: (shape: FlashingShape) => Mm,
  set: (value: Mm) => Partial<FlashingShape>,
): Fitted | null {
  const ledge = wall.supports.find(({ id }) => id === LEDGE);
  const isOnLedge = ({ panel, y }: Wall['flashings'][number]) => panel === ledge?.panel && y === ledge.y;
  const shape = wall.flashings.find(isOnLedge)?.shape;
  if (shape === undefined) return null;
  return {
    at: LEDGE,
    sound: measured(shape),
    most: twice(boundAt(limit, {}), measured(shape), TAPE),
    step: TAPE,
    change: (now, value) => ({
      ...now,
      flashings: now.flashings.map((each) =>
        isOnLedge(each) && each.shape ? { ...each, shape: { ...each.shape, ...set(value) } } : each,
      ),
    }),
  };
}
