import type { Measurement } from '../../../lib/inspect/check';
import type { CheckId } from '../../../lib/inspect/finding';
import type { Wall } from '../../../lib/wall/model';

/** Departure ÷ what the limit leaves, from what is meant; null where a thing is there or not. */
export function shareOf(
  check: CheckId,
  { limit, end, measured, bound }: Measurement,
  wall: Wall,
): number | null {
  if (limit.bound.form === 'present' || limit.bound.form === 'angle-table' || bound === 0) return null;
  if (limit.unit === '%') return (100 - measured) / (100 - bound);
  const design = designOf(check, limit.id, wall);
  // A joint that departs the other way is no departure of this kind: nothing, or less.
  if (design !== null) return Math.max(0, (measured - design) / (bound - design));
  return end === 'at most' ? measured / bound : bound / measured;
}

function designOf(check: CheckId, limit: string, wall: Wall): number | null {
  if (check !== 'thick-joint' && check !== 'thin-joint') return null;
  if (limit.startsWith('head')) return wall.joint;
  return limit === 'bed-from-mean-of-eight' ? 0 : wall.gauge - wall.family.height;
}
