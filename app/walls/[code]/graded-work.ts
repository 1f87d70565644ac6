import type { Mark } from '../../../components/wall-page/work-state';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { type MetOnWall, metOnWall } from '../../../lib/exercise/met-on-wall';
import { GradingError } from '../../../lib/exercise/place-marks';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { OpenWall } from '../../../lib/wall-page/open-wall';
import type { ResultRows } from '../../../lib/wall-page/result-rows';
import { rowsOf } from '../../../lib/wall-page/rows-of-result';

export interface GradedWork {
  readonly rows: ResultRows | null;
  /** Why the work cannot be marked, in a sentence; null where it can. */
  readonly problem: string | null;
  /** What the practice record keeps of it; null where it cannot be marked. */
  readonly met: MetOnWall | null;
}

/** The result of work on a wall, graded in the browser. Never fetched for set work: that is graded where the reader cannot look. */
export function gradedWork(open: OpenWall, rules: RuleSetId, marks: readonly Mark[]): GradedWork {
  try {
    const result = grade(keyOf(open, rules), marks);
    return { rows: rowsOf(result, open, rules), problem: null, met: metOnWall(result) };
  } catch (error) {
    if (!(error instanceof GradingError)) throw error;
    return { rows: null, met: null, problem: `This cannot be marked: ${error.message}.` };
  }
}
