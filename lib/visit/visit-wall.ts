import { layByCode, plannedFaults } from '../engines/engines';
import { type Brief, MAX_SEED } from '../generate/brief';
import { inspect } from '../inspect/inspect';
import type { Wall } from '../wall/model';

/** A wall that was laid sound: whatever shows on it has come since. */
export interface CalledWall {
  readonly brief: Brief;
  readonly wall: Wall;
}

/** The first wall from this brief on, seed by seed, that measures sound. For the server: an earlier engine may have laid it. */
export function calledWall(asked: Brief): CalledWall {
  for (let tries = 0; tries <= MAX_SEED; tries++) {
    const brief = { ...asked, seed: (asked.seed + tries) % (MAX_SEED + 1) };
    if (plannedFaults(brief).length > 0) continue;
    const { wall } = layByCode(brief);
    if (inspect(wall, brief.rules).length === 0) return { brief, wall };
  }
  throw new RangeError('no wall of this sort measures sound');
}
