import type { LimitId, RuleSetId } from './limit';
import { limitOf } from './limits';

/** The limits that checks ask for, in the order a reader meets them. The others are shown only. */
export const CHECK_LIMITS: readonly LimitId[] = [
  'back-contact',
  'back-void',
  'bed-joint-most',
  'bed-joint-least',
  'bed-from-mean-of-eight',
  'first-bed-most',
  'first-bed-least',
  'head-joint-most',
  'head-joint-least',
  'head-fill',
  'bed-taper',
  'rake-on-thin-veneer',
  'course-level',
  'plumb',
  'face-line',
  'gauge',
  'perpend-line',
  'unit-twist',
  'unit-set',
  'corner-square',
  'smallest-piece',
  'supported-share',
  'overhang-share',
  'overhang-fixed',
  'lintel-present',
  'lintel-bearing',
  'angle-size',
  'angle-thickness',
  'angle-leg',
  'tie-spacing',
  'tie-edge-distance',
  'tie-edge-spacing',
  'tie-opening',
  'tie-embedment',
  'tie-thickness',
  'tie-width',
  'mortar-life',
  'sand-ratio',
];

/** A figure of the first is not asked for where the rule set has the second. */
const GIVES_WAY: Readonly<Partial<Record<LimitId, LimitId>>> = {
  'bed-joint-most': 'bed-from-mean-of-eight',
  'bed-joint-least': 'bed-from-mean-of-eight',
  'angle-thickness': 'angle-size',
  'angle-leg': 'angle-size',
};

/** Whether any check asks a rule set for a limit: not for the thickness of an angle, say, where there is a table of angles. */
export function isAsked(rules: RuleSetId, id: LimitId): boolean {
  const before = GIVES_WAY[id];
  return before === undefined || limitOf(rules, before) === undefined;
}
