import { refuseNegative, refuseNotPositive } from './refusals';

/** Parts by volume; sand damp and loose. Masonry cement or mortar cement counts as cement. */
export interface MortarMix {
  readonly cement: number;
  readonly lime: number;
  readonly sand: number;
}

/**
 * Sand for one part of binder, by volume: sand ÷ (cement + lime). The proportion tables of ASTM C270 ask 2 1/4 to 3. A mix without
 * sand gives 0. Which type a mix is, the limits say.
 * @throws RangeError for a negative part, or no cement and no lime.
 */
export function sandRatio({ cement, lime, sand }: MortarMix): number {
  refuseNegative('cement', cement);
  refuseNegative('lime', lime);
  refuseNegative('sand', sand);
  refuseNotPositive('cement and lime', cement + lime);
  return sand / (cement + lime);
}
