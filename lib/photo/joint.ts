import type { Spot } from './matrix';

/** The two edges of a joint across one narrow strip, as pixels of the photograph: above and below a bed, left and right of a head. */
export interface Cut {
  readonly from: Spot;
  readonly to: Spot;
}

export interface Joint {
  /** A person moved it. */
  readonly byHand?: boolean;
  readonly cuts: readonly Cut[];
}

/** What was found in a photograph: beds from the top down, and for each course between two of them its head joints from left to right. */
export interface Joints {
  readonly beds: readonly Joint[];
  readonly heads: readonly (readonly Joint[])[];
  /** How soft the edges are: the standard deviation of the blur over the width of a bed. */
  readonly softness: number;
}

/** A joint in the square picture, whose edges were fitted: where a strip runs through it and what the fit says, in mm. */
export interface Fitted {
  /** Along the joint. */
  readonly along: number;
  /** Across it: its middle and its width. */
  readonly middle: number;
  readonly width: number;
  readonly step: number;
  readonly soft: number;
}
