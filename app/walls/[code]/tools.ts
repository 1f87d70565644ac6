import { Notebook } from '../../../components/instruments/notebook';
import { Review } from '../../../components/wall-page/review';
import { detailsText, faultName } from '../../../lib/wall-page/fault-choices';
import { lastLooks } from '../../../lib/wall-page/review-questions';
import { PickedCard } from './picked-card';

/**
 * What a practice page needs only once the reader points at something: the fault catalogue with its search, the
 * instruments, the review before handing in.
 * Fetched apart, after the wall stands on the screen, so that a phone shows the wall sooner.
 */
export const TOOLS = { PickedCard, Notebook, Review, faultName, detailsText, lastLooks };
