import { faultName } from '../fault-choices';
import { PickedCard } from './picked-card';

/**
 * What a practice page needs only once the reader points at something: the fault catalogue with its search, and the instruments.
 * Fetched apart, after the wall stands on the screen, so that a phone shows the wall sooner.
 */
export const SECOND_PART = { PickedCard, faultName };
export type SecondPart = typeof SECOND_PART;
