import type { LimitKind } from '../../../lib/limits/limit';
import type { Act } from '../../../lib/marking/act';

/** What may be said of a mark beyond place, name and certainty. All of it can be left out. */
export interface MarkDetails {
  /** As typed. */
  readonly reading: string;
  readonly kind: LimitKind | null;
  readonly act: Act | null;
}

export const NO_DETAILS: MarkDetails = { reading: '', kind: null, act: null };

export function hasDetails({ reading, kind, act }: MarkDetails): boolean {
  return reading !== '' || kind !== null || act !== null;
}
