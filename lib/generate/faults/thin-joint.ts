import type { SpoilWall } from '../bench';
import { spoilJoint } from '../spoil-joints';

export const spoilThinJoint: SpoilWall = (bench) => spoilJoint(bench, -1);
