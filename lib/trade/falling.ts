import { MM_PER_M, type Mm } from '../units';
import { GRAVITY } from './gravity';
import { refuseNegative, refuseNotPositive } from './refusals';

// A body dropped from rest, no air. For showing why nobody stands below a wall that is being built or put right; no energy is a safe one.

/** Energy on landing, joules: m·g·h, mass in kg, height in mm. @throws RangeError for a mass not above zero or a negative height. */
export function fallEnergy(mass: number, height: Mm): number {
  refuseNotPositive('mass', mass);
  refuseNegative('height', height);
  return (mass * GRAVITY * height) / MM_PER_M;
}

/** Speed on landing, m/s: √(2gh). The mass does not matter. @throws RangeError for a negative height. */
export function impactSpeed(height: Mm): number {
  refuseNegative('height', height);
  return Math.sqrt((2 * GRAVITY * height) / MM_PER_M);
}

/** The drop that gives a mass this energy, mm: E/(m·g). @throws RangeError for a mass not above zero or a negative energy. */
export function dropForEnergy(mass: number, energy: number): Mm {
  refuseNotPositive('mass', mass);
  refuseNegative('energy', energy);
  return (energy / (mass * GRAVITY)) * MM_PER_M;
}
