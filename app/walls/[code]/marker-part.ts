import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { GradingError } from '../../../lib/exercise/place-marks';
import { rowsOf } from '../result-rows';

/** The key and the marking. Never fetched for set work: that is marked where the reader cannot look. */
export const MARKER_PART = { keyOf, grade, GradingError, rowsOf };
export type MarkerPart = typeof MARKER_PART;
