import { GradingError, grade } from '../../grading';
import { rowsOf } from '../result-rows';

/** The key and the marking. Never fetched for set work: that is marked where the reader cannot look. */
export const MARKER_PART = { grade, GradingError, rowsOf };
export type MarkerPart = typeof MARKER_PART;
