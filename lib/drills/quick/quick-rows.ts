import type { FaceBox } from '../../geometry/box';
import type { View } from '../../views/view';
import type { Wall } from '../../wall/model';
import type { ExplainedFinding } from '../../../components/drills/explained-finding';

/** One wall of a round that is over, with its key. */
export interface QuickRow {
  /** Its place in the round, from 1. */
  readonly number: number;
  readonly code: string;
  readonly wall: Wall;
  /** What was seen of it, and through which window. */
  readonly view: View;
  readonly window: FaceBox | null;
  readonly faulty: boolean;
  readonly saidFaulty: boolean;
  readonly findings: readonly ExplainedFinding[];
}
