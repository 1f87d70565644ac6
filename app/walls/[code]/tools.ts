import { Notebook } from '../../../components/instruments/notebook';
import { formatMeasure } from '../../../components/result/format-measure';
import { Review } from '../../../components/wall-page/review';
import type { Mark } from '../../../components/wall-page/work-state';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { LengthSystem } from '../../../lib/units';
import { faultName } from '../../../lib/wall-page/fault-choices';
import { reviewQuestions } from '../../../lib/wall-page/review-questions';
import { PickedCard } from './picked-card';

/**
 * What a wall page needs only once the reader points at something: the fault catalogue with its search, the
 * instruments, the review before handing in.
 * Fetched apart, after the wall stands on the screen, so that a phone shows the wall sooner.
 */
export const TOOLS = { PickedCard, Notebook, Review, faultName, detailsText, reviewQuestions };

/** What a mark says beyond place, name and certainty: "9.5 mm · good practice · put right now". Empty when nothing. */
function detailsText({ fault, reading, kind, act }: Mark, system: LengthSystem): string {
  const { unit } = CATALOGUE[fault].asks;
  const amount = reading === undefined ? undefined : formatMeasure(reading, unit, system);
  return [amount, kind, act].filter((each) => each !== undefined).join(' · ');
}
