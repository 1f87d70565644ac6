import type { SpoilWall } from '../bench';
import { spoilJoint } from '../spoil-joints';

export const spoilThickJoint: SpoilWall = (bench) => spoilJoint(bench, 1);
