import type { Bound, LimitId, RuleSetId } from '../../lib/limits/limit';
import { TYPED_LIMITS } from '../reference/deciding-limits';

/** Sizes that stepped bounds go by; only the one the bound asks for is read. */
export interface Sizes {
  readonly depth?: number;
  readonly span?: number;
  readonly air?: number;
  readonly storeys?: number;
}

/** The bound that governs, by the names the checks use: the rule set's own, else that of good practice. */
export function ruleOf(rules: RuleSetId, id: LimitId): Bound | undefined {
  const [bound] = TYPED_LIMITS[rules][id] ?? TYPED_LIMITS['good-practice'][id] ?? [];
  return bound;
}

/** The bound as one number, mm (or the limit's own unit); undefined when the rules are silent or the form is another. */
export function numberOf(rules: RuleSetId, id: LimitId, sizes: Sizes = {}): number | undefined {
  const bound = ruleOf(rules, id);
  if (bound === undefined) return undefined;
  if (bound.form === 'number') return bound.value;
  if (bound.form === 'share-of-depth') {
    return sizes.depth === undefined ? undefined : bound.share * sizes.depth;
  }
  if (bound.form === 'stepped') {
    const size = {
      'unit depth': sizes.depth,
      'clear span': sizes.span,
      'air temperature': sizes.air,
      'storeys above': sizes.storeys,
    }[bound.by];
    if (size === undefined) return undefined;
    for (const step of bound.steps) if (size <= step.upTo) return step.value;
  }
  return undefined;
}

export interface Verdict {
  readonly measured: number;
  readonly limit: number;
}

/** The worst comparison of a steady slope (mm per mm) over `length` mm: the first of the greatest measured ÷ limit. */
export function slopeOver(bound: Bound, slope: number, length: number): Verdict | undefined {
  const whole = slope * length;
  if (bound.form === 'number') return { measured: whole, limit: bound.value };
  if (bound.form === 'pro-rata') return { measured: whole, limit: proRata(bound, length) };
  if (bound.form !== 'any-run') return undefined;
  const tried: Verdict[] = [];
  for (const { run, value } of bound.runs) {
    tried.push({ measured: slope * Math.min(run, length), limit: value });
  }
  tried.push({ measured: whole, limit: bound.overall });
  let worst: Verdict | undefined;
  for (const one of tried) {
    if (worst === undefined || isWorse(one, worst)) worst = one;
  }
  return worst;
}

/** Strictly worse, by more than the last bits. */
function isWorse(one: Verdict, other: Verdict): boolean {
  return one.measured / one.limit > (other.measured / other.limit) * (1 + 1e-12);
}

/**
 * How far a face may stand off its plane within a length, mm: the value of the shortest run that is at least as long,
 * else the overall one. A hump is no slope, so nothing is scaled.
 */
export function departureWithin(bound: Bound, length: number): number | undefined {
  if (bound.form === 'number') return bound.value;
  if (bound.form === 'pro-rata') return proRata(bound, length);
  if (bound.form !== 'any-run') return undefined;
  let best: { readonly run: number; readonly value: number } | undefined;
  for (const one of bound.runs) {
    if (one.run >= length && (best === undefined || one.run < best.run)) best = one;
  }
  return best?.value ?? bound.overall;
}

function proRata(bound: Extract<Bound, { form: 'pro-rata' }>, length: number): number {
  return length <= bound.run ? (bound.value * length) / bound.run : bound.beyond;
}
