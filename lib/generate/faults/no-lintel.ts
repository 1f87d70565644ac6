import { NoRoom, type SpoilWall } from '../bench';
import { replaceSupport, supportSpot } from '../supports';

/** Leaves a lintel out: the units over the opening stand on the frame, or on nothing. */
export const spoilNoLintel: SpoilWall = ({ wall, taken }) => {
  const lintel = wall.supports.find(
    ({ kind, id }) => kind === 'lintel' && !taken.some(({ panel }) => panel === id),
  );
  if (lintel === undefined) throw new NoRoom('no lintel left');
  return { wall: replaceSupport(wall, lintel, []), taken: supportSpot(lintel) };
};
