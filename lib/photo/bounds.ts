import { boundAt, slopeVerdict } from '../limits/bound';
import type { Limit, LimitId, RuleSetId } from '../limits/limit';
import { isAsked, limitOf, namedLimitOf } from '../limits/limits';
import { MM_PER_M, type Mm } from '../units';
import type { QuantityName, Values } from './quantities';

/** What a quantity is held to: at least, at most, or both; in the quantity's own unit. Ends belong. */
export interface Bounds {
  readonly limit: Limit;
  readonly least?: number;
  readonly most?: number;
}

/** What the person knows of the units, beside the photograph: face length and height. */
export interface UnitSize {
  readonly length: Mm;
  readonly height: Mm;
}

/** A gauge rod is read over this many courses. */
const ROD_COURSES = 4;
/** Shorter runs are not judged for level: as on the walls that are laid here. */
export const SHORTEST_RUN: Mm = 1000;

/** @param run how far along the wall the courses were seen, mm. */
export function boundsOf(
  name: QuantityName,
  values: Values,
  rules: RuleSetId,
  run: Mm,
  unit?: UnitSize,
): Bounds | undefined {
  switch (name) {
    case 'gauge':
      return unit && gaugeBounds(rules, unit);
    case 'bed-joint':
      return isAsked(rules, 'bed-joint-most')
        ? between(rules, 'bed-joint-least', 'bed-joint-most')
        : undefined;
    case 'thickest-bed':
    case 'thinnest-bed':
      return isAsked(rules, 'bed-joint-most')
        ? between(rules, 'bed-joint-least', 'bed-joint-most')
        : fromMean(rules, values['bed-joint']?.value);
    case 'head-joint':
    case 'widest-head':
    case 'narrowest-head':
      return between(rules, 'head-joint-least', 'head-joint-most');
    case 'course-level':
      return run < SHORTEST_RUN ? undefined : levelBounds(rules, run);
    case 'perpend-drift': {
      const limit = limitOf(rules, 'perpend-line');
      return limit && { limit, most: boundAt(limit, {}) };
    }
    case 'lap': {
      const limit = namedLimitOf(rules, 'lap-least');
      const length = unit?.length ?? values.stretcher?.value;
      return limit && length !== undefined
        ? { limit, least: (boundAt(limit, {}) / 100) * length }
        : undefined;
    }
    case 'course-spread':
    case 'tallest-course':
    case 'shortest-course':
    case 'bed-joint-spread':
    case 'head-joint-spread':
    case 'stretcher':
    case 'smallest-piece':
      return undefined;
  }
}

function between(rules: RuleSetId, least: LimitId, most: LimitId): Bounds | undefined {
  const [low, high] = [limitOf(rules, least), limitOf(rules, most)];
  const limit = high ?? low;
  return (
    limit && {
      limit,
      ...(low && { least: boundAt(low, {}) }),
      ...(high && { most: boundAt(high, {}) }),
    }
  );
}

function fromMean(rules: RuleSetId, mean: Mm | undefined): Bounds | undefined {
  const limit = limitOf(rules, 'bed-from-mean-of-eight');
  if (limit === undefined || mean === undefined) return undefined;
  const off = boundAt(limit, {});
  return { limit, least: mean - off, most: mean + off };
}

/** The unit and the joint that the rules work to make the rod. */
function gaugeBounds(rules: RuleSetId, unit: UnitSize): Bounds | undefined {
  const [limit, joint] = [limitOf(rules, 'gauge'), namedLimitOf(rules, 'joint-design')];
  if (limit === undefined || joint === undefined) return undefined;
  const rod = unit.height + boundAt(joint, {});
  const off = boundAt(limit, {}) / ROD_COURSES;
  return { limit, least: rod - off, most: rod + off };
}

/** As a steady slope of a mm in a metre over that run stands to its limit, so stands the steepest that passes to it. */
function levelBounds(rules: RuleSetId, run: Mm): Bounds | undefined {
  const limit = limitOf(rules, 'course-level');
  if (limit === undefined) return undefined;
  const one = slopeVerdict(limit.bound, 1 / MM_PER_M, run);
  return { limit, least: -one.limit / one.measured, most: one.limit / one.measured };
}
