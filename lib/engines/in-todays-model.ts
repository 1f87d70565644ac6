import { WALL_VERSION, type Wall } from '../wall/model';
import { parseWall } from '../wall/schema';

/** A wall in the model of its own day. */
export interface EarlierWall {
  readonly version: number;
}

/** By the version they start from. */
const STEPS: Readonly<Record<number, (wall: EarlierWall) => EarlierWall>> = {
  // All walls were of brick but for their quoins.
  1: (wall) => ({ ...wall, version: 2, finish: 'brick' }),
};

/** The same wall as the checks and drawings of today read it: what the model has gained since is as it went without saying then. */
export function inTodaysModel(wall: EarlierWall): Wall {
  if (isOfToday(wall)) return wall;
  const step = STEPS[wall.version];
  if (!step)
    throw new RangeError(`no step leads from version ${wall.version} of the wall's model to ${WALL_VERSION}`);
  const next = step(wall);
  return next.version === WALL_VERSION ? parseWall(next) : inTodaysModel(next);
}

function isOfToday(wall: EarlierWall): wall is Wall {
  return wall.version === WALL_VERSION;
}
