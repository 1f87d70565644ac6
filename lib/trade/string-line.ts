import { MM_PER_M, type Mm } from '../units';
import { GRAVITY } from './gravity';
import { refuseNegative, refuseNotCount, refuseNotPositive } from './refusals';

// A line held at the same height at either end. Weight in N/m, which is the same number as N/mm × 1000; lengths in mm, pull in N.
// The parabola is the usual small-sag form of the catenary; below a sag of a hundredth of the length they agree to a tenth of a per mille.

/** Usual line: twisted nylon of about 1.5 mm, g/m. Worked out from 1.14 g/cm³ at 70 % fill; sold as about 1090 ft to the pound. */
export const USUAL_LINE_MASS = 1.4;

/** Air at about 20 °C, kg/m³, and the drag coefficient of a round line across the wind. Textbook round figures. */
const AIR_DENSITY = 1.2;
const DRAG = 1.2;

/** Weight of a line, N/m, from its mass in g/m. @throws RangeError for a negative mass. */
export function lineWeight(mass: number): number {
  refuseNegative('mass', mass);
  return (mass / 1000) * GRAVITY;
}

/** Push of a side wind on a line, N/m: ½·ρ·Cd·d·v², speed in m/s, ρ 1.2 kg/m³, Cd 1.2. @throws RangeError for negative numbers. */
export function windOnLine(speed: number, diameter: Mm): number {
  refuseNegative('speed', speed);
  refuseNegative('diameter', diameter);
  return (AIR_DENSITY * DRAG * (diameter / MM_PER_M) * speed ** 2) / 2;
}

/** Sag at mid-span as a parabola, mm: w·L²/(8T). With the wind for the weight it is how far the line blows aside. @throws RangeError on senseless numbers. */
export function parabolaSag(weight: number, length: Mm, pull: number): Mm {
  refuseLine(weight, length, pull);
  return ((weight / MM_PER_M) * length ** 2) / (8 * pull);
}

/** Sag at mid-span as a catenary of mid-span pull T, mm: a(cosh(L/2a) − 1), a = T/w. A line without weight does not sag. @throws RangeError on senseless numbers. */
export function catenarySag(weight: number, length: Mm, pull: number): Mm {
  refuseLine(weight, length, pull);
  if (weight === 0) return 0;
  const parameter = (pull / weight) * MM_PER_M;
  // cosh(x) − 1 written as 2·sinh²(x/2), which keeps its digits when x is small.
  return 2 * parameter * Math.sinh(length / (4 * parameter)) ** 2;
}

/** How far the line is below the straight at x from one end, mm: w·x(L − x)/(2T). @throws RangeError on senseless numbers, or x beyond the ends. */
export function dipAt(x: Mm, weight: number, length: Mm, pull: number): Mm {
  refuseLine(weight, length, pull);
  refuseNegative('x', x);
  if (x > length) throw new RangeError(`x: ${x} mm is beyond the end at ${length} mm`);
  return ((weight / MM_PER_M) * x * (length - x)) / (2 * pull);
}

/**
 * Greatest sag with supports on the true line that part it into equal bays, mm: the sag of one bay, so s/n². One support in the middle is
 * two bays, and the greatest sag is then at the quarter points. @throws RangeError on senseless numbers.
 */
export function sagInBays(weight: number, length: Mm, pull: number, bays: number): Mm {
  refuseNotCount('bays', bays);
  return parabolaSag(weight, length / bays, pull);
}

/** How much longer than the straight a sagging line is, mm: 8s²/(3L). @throws RangeError on senseless numbers. */
export function extraLineLength(sag: Mm, length: Mm): Mm {
  refuseNegative('sag', sag);
  refuseNotPositive('length', length);
  return (8 * sag ** 2) / (3 * length);
}

function refuseLine(weight: number, length: Mm, pull: number): void {
  refuseNegative('weight', weight);
  refuseNotPositive('length', length);
  refuseNotPositive('pull', pull);
}
