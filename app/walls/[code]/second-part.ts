import { Notebook } from '../../../components/instruments/notebook';
import { Review } from '../../../components/wall-page/review';
import { faultName, saidOf } from '../fault-choices';
import { lastLooks } from '../last-looks';
import { PickedCard } from './picked-card';

/**
 * What a practice page needs only once the reader points at something: the fault catalogue with its search, the
 * instruments, the last look before handing in.
 * Fetched apart, after the wall stands on the screen, so that a phone shows the wall sooner.
 */
export const SECOND_PART = { PickedCard, Notebook, Review, faultName, saidOf, lastLooks };
export type SecondPart = typeof SECOND_PART;
