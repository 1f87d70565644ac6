import type { Mm } from '../units';
import type { PanelId } from './part-id';

/** The flashing that drains a support; an open head joint in the course right on it is a weep. */
export interface Flashing {
  readonly panel: PanelId;
  readonly y: Mm;
  readonly fromX: Mm;
  readonly toX: Mm;
  /** Earlier engines laid flashings of no told shape; of those nothing more is asked. */
  readonly shape?: FlashingShape;
}

/** A flashing cut across, and its two ends. */
export interface FlashingShape {
  /** How far it goes up the backing. */
  readonly up: Mm;
  /** Its outer edge: z from the face line, as of a support. */
  readonly front: Mm;
  /** How high each end is turned up. */
  readonly leftDam: Mm;
  readonly rightDam: Mm;
}

/** Mortar that fell down the air space and lies on a flashing, against the back of the units. */
export interface Droppings {
  readonly panel: PanelId;
  /** What it lies on: the level of the flashing. */
  readonly y: Mm;
  readonly height: Mm;
  readonly fromX: Mm;
  readonly toX: Mm;
}
