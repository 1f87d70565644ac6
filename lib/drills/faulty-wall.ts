import { layByCode } from '../engines/engines';
import { type Key, keyOf } from '../exercise/key';
import type { Brief } from '../generate/brief';
import type { CheckId } from '../inspect/finding';
import { surveyedWall } from '../wall/surveyed';
import { firstMeasured } from './faulty-brief';

/** A wall with something to find, and what is measured on it. */
export interface FaultyWall extends Key {
  readonly brief: Brief;
}

/** The first wall from this brief on, seed by seed, on which a fault is measured, one of these if any are named. */
export function faultyWall(asked: Brief, wanted: readonly CheckId[] = []): FaultyWall {
  return firstMeasured(asked, wanted, (brief) => {
    const key = keyOf(surveyedWall(layByCode(brief).wall), brief.rules);
    const fits = key.findings.some(({ check }) => wanted.length === 0 || wanted.includes(check));
    return fits ? { ...key, brief } : null;
  });
}
