import { MarkingError, requireFinite } from './marking-error';

// ln 2 in two parts (Cody and Waite): the first has so few bits that a whole number times it stays exact.
const LN2_HIGH = 355 / 512;
const LN2_LOW = -0.00021219444005469057;
const LN2 = LN2_HIGH + LN2_LOW;

/** Terms after which the series below no longer change a number. */
const LOG_TERMS = 15;
const EXP_TERMS = 20;
/** Above it the result would leave the numbers; below its negative, the result is 0. */
const EXP_MOST = 709;
const EXP_LEAST = -745;

/**
 * Natural logarithm of x > 0, by + - * / only, so every engine gives the same bits; within 1e-15 of the true
 * value, relatively. x is halved or doubled to m in [sqrt 1/2, sqrt 2], then
 * ln m = 2 (s + s^3/3 + s^5/5 + ...) with s = (m - 1) / (m + 1). Throws MarkingError unless x is finite and > 0.
 */
export function naturalLog(x: number): number {
  requireFinite('naturalLog', x);
  if (x <= 0) throw new MarkingError(`naturalLog: ${x} is not above zero`);
  let m = x;
  let doublings = 0;
  while (m > Math.sqrt(2)) {
    m /= 2;
    doublings += 1;
  }
  while (m < Math.sqrt(0.5)) {
    m *= 2;
    doublings -= 1;
  }
  const s = (m - 1) / (m + 1);
  let series = 0;
  for (let term = LOG_TERMS; term >= 0; term -= 1) series = series * s * s + 1 / (2 * term + 1);
  return doublings * LN2_HIGH + (2 * s * series + doublings * LN2_LOW);
}

/**
 * e to the x, by + - * / only, within 1e-14 of the true value, relatively; 0 below -745. x is brought within
 * half of ln 2 of zero, the power series is summed there, and the result is doubled or halved back.
 * Throws MarkingError when x is not finite or above 709.
 */
export function exponential(x: number): number {
  requireFinite('exponential', x);
  if (x > EXP_MOST) throw new MarkingError(`exponential: ${x} is above ${EXP_MOST}`);
  if (x < EXP_LEAST) return 0;
  const doublings = Math.round(x / LN2);
  const r = x - doublings * LN2_HIGH - doublings * LN2_LOW;
  let result = 1;
  for (let term = EXP_TERMS; term >= 1; term -= 1) result = 1 + (result * r) / term;
  for (let i = 0; i < doublings; i += 1) result *= 2;
  for (let i = 0; i > doublings; i -= 1) result /= 2;
  return result;
}
