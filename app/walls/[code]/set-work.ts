import type { Mark } from '../../../components/wall-page/work-state';
import type { Reading } from '../../../lib/instruments/reading';
import type { ResultRows } from '../../../lib/wall-page/result-rows';
import type { SiteAnswers } from './site-answers';

/** All that a reader hands in. */
export interface HandedWork {
  readonly marks: readonly Mark[];
  readonly saysSound: boolean;
  /** Units in the order in which they were lifted. */
  readonly opened: readonly string[];
  /** The notebook. */
  readonly readings: readonly Reading[];
  /** Time for which the page was visible, ms. */
  readonly spentMs: number;
}

/** A wall set as work: graded on the server, with no key in the browser. */
export interface SetWork {
  /** Name under which the work is kept in this tab: one for each attempt. */
  readonly keptAs: string;
  /** How many units may be lifted; null for the wall's own number. */
  readonly openingsUp: number | null;
  /** Where the site draws the wall and answers the instruments. */
  readonly site?: SiteAnswers | undefined;
  readonly onHandIn: (work: HandedWork) => void;
  /** Why the last hand-in did not arrive, in a sentence: it can then be handed in again. */
  readonly problem?: string | null;
  /** The result, once it is given out. */
  readonly rows: ResultRows | null;
  /** Address under which the pictures of the faults' places lie, once the result is given out. */
  readonly places?: string;
}
