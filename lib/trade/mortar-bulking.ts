import { refuseNegative } from './refusals';

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
