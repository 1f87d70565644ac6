import { refuseNegative, refuseNotPositive } from './refusals';

// Damp sand takes more room than dry: water holds the grains apart. Soaked sand takes the room of dry sand again. ASTM C270 counts sand
// damp and loose, so its parts need no allowance; books that count dry sand want one. Say which before you reckon.

/** Bulking by the jar, as a share: (damp height − flooded height) ÷ flooded height. @throws RangeError on senseless numbers, or damp lower than flooded. */
export function bulkingOf(damp: number, flooded: number): number {
  refuseNotPositive('damp height', damp);
  refuseNotPositive('flooded height', flooded);
  if (damp < flooded) throw new RangeError(`damp height: ${damp} is less than flooded, ${flooded}`);
  return (damp - flooded) / flooded;
}

/** Dry sand in a volume of damp sand: V ÷ (1 + b). In the unit of the volume. @throws RangeError for negative numbers. */
export function drySandIn(damp: number, bulking: number): number {
  refuseNegative('damp volume', damp);
  refuseNegative('bulking', bulking);
  return damp / (1 + bulking);
}

/** Damp sand to measure out for so much dry sand: V × (1 + b). @throws RangeError for negative numbers. */
export function dampSandFor(dry: number, bulking: number): number {
  refuseNegative('dry volume', dry);
  refuseNegative('bulking', bulking);
  return dry * (1 + bulking);
}
