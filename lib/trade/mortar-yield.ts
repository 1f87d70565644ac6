import type { MortarMix } from './mortar-mix';
import { refuseNegative, refuseNotPositive } from './refusals';

// Absolute volumes: what the grains themselves take up, plus water, plus air. In lb and ft³ as C270 prints its figures; a batch in other
// measures scales, since only ratios go in.

/** Loose weights, lb/ft³, as ASTM C270 lists them (quoted widely; the standard itself not read): Portland cement, hydrated lime, dry sand in damp loose sand. */
export const LOOSE_WEIGHT = { cement: 94, lime: 40, sand: 80 } as const;

/** Times as heavy as water, textbook figures: cement 3.15, hydrated lime 2.3, sand 2.65. */
export const PARTICLE_GRAVITY = { cement: 3.15, lime: 2.3, sand: 2.65 } as const;

/** lb/ft³, fresh water. */
export const WATER_WEIGHT = 62.4;

const MATERIALS = ['cement', 'lime', 'sand'] as const;

/** Weights of the parts of a mix by volume in ft³, lb. @throws RangeError for a negative part. */
export function batchWeights(mix: MortarMix): MortarMix {
  for (const material of MATERIALS) refuseNegative(material, mix[material]);
  return {
    cement: mix.cement * LOOSE_WEIGHT.cement,
    lime: mix.lime * LOOSE_WEIGHT.lime,
    sand: mix.sand * LOOSE_WEIGHT.sand,
  };
}

/** Volume of each part without its pores, ft³: weight ÷ (gravity × 62.4). @throws RangeError for a negative part. */
export function solidVolumes(mix: MortarMix): MortarMix {
  const weights = batchWeights(mix);
  return {
    cement: weights.cement / (PARTICLE_GRAVITY.cement * WATER_WEIGHT),
    lime: weights.lime / (PARTICLE_GRAVITY.lime * WATER_WEIGHT),
    sand: weights.sand / (PARTICLE_GRAVITY.sand * WATER_WEIGHT),
  };
}

/**
 * Mortar a mix gives, ft³: (solids + water) ÷ (1 − air). `water` in lb, `air` a share of the mortar from 0 up to, not with, 1.
 * @throws RangeError on senseless numbers.
 */
export function yieldOf(mix: MortarMix, water: number, air = 0): number {
  refuseNegative('water', water);
  refuseNegative('air', air);
  if (air >= 1) throw new RangeError(`air: ${air} leaves no mortar`);
  const { cement, lime, sand } = solidVolumes(mix);
  const solids = cement + lime + sand;
  refuseNotPositive('cement, lime and sand', solids);
  return (solids + water / WATER_WEIGHT) / (1 - air);
}
