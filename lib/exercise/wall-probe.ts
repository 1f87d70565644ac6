import type { WallProbe } from '../classes/forms';
import { layWall } from '../generate/generate';
import { planOf } from '../generate/planner';
import type { Finding } from '../inspect/finding';
import { inspect } from '../inspect/inspect';

/** Looks at walls for lib/classes, which may neither lay nor inspect one. */
export const WALL_PROBE: WallProbe = {
  planned: (brief) => planOf(brief).spoils.length,
  measured: (brief) => inspect(layWall(brief), brief.rules).map(severityOf),
};

/** How far a fault is beyond its limit, as a share of the limit: at most 1, which is also what a thing that is missing counts. */
export function severityOf({ margin, limit, unit }: Pick<Finding, 'margin' | 'limit' | 'unit'>): number {
  return unit === 'there or not' || limit === 0 ? 1 : Math.min(1, Math.abs(margin / limit));
}
