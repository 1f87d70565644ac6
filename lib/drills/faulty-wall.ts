import { layByCode } from '../engines/engines';
import type { Brief } from '../generate/brief';
import type { CheckId, Finding } from '../inspect/finding';
import { inspect } from '../inspect/inspect';
import type { Wall } from '../wall/model';
import { firstMeasured } from './faulty-brief';

/** A wall with something to find, and what is measured on it. */
export interface FaultyWall {
  readonly brief: Brief;
  readonly wall: Wall;
  readonly findings: readonly Finding[];
}

/** The first wall from this brief on, seed by seed, on which a fault is measured, one of these if any are named. */
export function faultyWall(asked: Brief, wanted: readonly CheckId[] = []): FaultyWall {
  return firstMeasured(asked, wanted, (brief) => {
    const { wall } = layByCode(brief);
    const findings = inspect(wall, brief.rules);
    const fits = findings.some(({ check }) => wanted.length === 0 || wanted.includes(check));
    return fits ? { brief, wall, findings } : null;
  });
}
