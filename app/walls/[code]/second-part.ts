import { ResultView } from '../../../components/result/result-view';
import { GradingError, grade } from '../../grading';
import { faultName } from '../fault-choices';
import { rowsOf } from '../result-rows';
import { PickedCard } from './picked-card';

/**
 * What a practice page needs only once the reader points at something: the fault catalogue with its search, the key, the marking and
 * the result. Fetched apart, after the wall stands on the screen, so that a phone shows the wall sooner.
 */
export const SECOND_PART = { PickedCard, ResultView, grade, GradingError, faultName, rowsOf };
export type SecondPart = typeof SECOND_PART;
