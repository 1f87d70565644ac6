import type { CheckId } from '../inspect/finding';
import type { PartId } from '../wall/part-id';
import type { Answer } from './five-marks';

/** How sure the learner says to be: 1 unsure, 2 fairly sure, 3 certain. */
export type Sure = 1 | 2 | 3;

/** A mark as a learner hands it in: what it says beyond place, name and certainty is optional. */
export interface RawMark extends Answer {
  /** As the learner's device named it: the wall may have no such part. */
  readonly part: string;
  readonly fault: CheckId;
  /** 2 where it is not said. */
  readonly sure?: Sure;
}

/** One mark of a learner after its part has been looked up on the wall. */
export interface PlacedMark {
  /** Id of the part marked; a panel ('A') or course ('A12') when the learner meant the whole of it. */
  readonly part: PartId;
  readonly panel: string;
  /** The place marked, in mm in the panel's frame: x to the right, y up. */
  readonly x: number;
  readonly y: number;
  /** The check the learner names. */
  readonly fault: CheckId;
  readonly sure: Sure;
}

/** More marks than this on one wall are refused. */
export const MOST_MARKS = 200;
/** More names than this on one part is guessing. */
export const MOST_NAMES_A_PART = 2;
