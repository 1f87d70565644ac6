import { slopeVerdict } from '../../../limits/bound';
import type { Bound } from '../../../limits/limit';
import type { Mm } from '../../../units';

/** The steady slope (mm per mm) over a run that breaks a level, plumb or line bound by `severity`. */
export function slopeFor(bound: Bound, run: Mm, severity: number): number {
  const steep = slopeVerdict(bound, 1, run);
  return (severity * steep.limit) / steep.measured;
}
