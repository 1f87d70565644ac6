import { slopeVerdict } from '../../../limits/bound';
import type { Bound } from '../../../limits/limit';
import type { Mm } from '../../../units';
import { departureAt } from '../../spoil-input';

/** The steady slope (mm per mm) over a run that takes up a level, plumb or line bound by `severity`, clear of it by so much. */
export function slopeFor(bound: Bound, run: Mm, severity: number, clear: Mm): number {
  const steep = slopeVerdict(bound, 1, run);
  return departureAt(steep.limit, severity, clear) / steep.measured;
}
