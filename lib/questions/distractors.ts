import type { Limit } from '../limits/limit';
import { inches, type LengthSystem } from '../units';

const FACTORS = [0.5, 0.6, 0.75, 0.85, 1.05, 1.2, 1.35, 1.5, 2];
const SIXTEENTH = inches(1 / 16);
const FOOT_IN_M = inches(0, 1) / 1000;
const ROUND = [50, 25, 10, 5];
const ROUND_SIXTEENTHS = [64, 32, 16, 8, 4, 2];

/**
 * Figures near a limit, as round as the limit is itself and on both sides of it: 25 among 13, 19 and 21 would be told by its form.
 * In the unit of the limit; shares not above the whole.
 */
export function distractorsOf(value: number, unit: Limit['unit'], system: LengthSystem): readonly number[] {
  // A length that is no whole number of mm was published in inches.
  const inInches = unit === 'mm' && (system === 'inches' || !Number.isInteger(value));
  // And a distance that is no whole number of metres, in feet.
  const inFeet = unit === 'm' && system === 'inches' && !Number.isInteger(value);
  const step = inInches ? SIXTEENTH : inFeet ? FOOT_IN_M : Number.isInteger(value) ? 1 : 0.1;
  const steps = Math.round(value / step);
  const round = (inInches ? ROUND_SIXTEENTHS : ROUND).find((each) => steps % each === 0 && steps >= 3 * each);
  const grain = round ?? 1;
  const near = FACTORS.map((factor) => Math.round((steps * factor) / grain) * grain);
  const others = [...new Set(near)].filter((each) => each > 0 && each !== steps).map((each) => each * step);
  return unit === '%' ? others.filter((each) => each <= 100) : others;
}
