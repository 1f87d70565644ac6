import type { FaceBox } from '../geometry/box';
import type { HowSure, LimitKind, RuleSetId } from '../limits/limit';
import type { PartId } from '../wall/part-id';

/** Faults by their plain trade name. Each has a file of that name under generate/faults and one under inspect/checks. */
export const CHECKS = [
  'missing-back-mortar',
  'ring-buttered-back',
  'tapering-bed',
  'thick-joint',
  'thin-joint',
  'open-head',
  'raked-thin-veneer',
  'course-off-level',
  'gauge-drift',
  'perpend-drift',
  'bulge-or-hollow',
  'out-of-plumb',
  'twisted-unit',
  'proud-unit',
  'corner-not-square',
  'sliver-piece',
  'overhang-too-far',
  'no-bearing-return',
  'short-lintel-bearing',
  'no-lintel',
  'weak-angle',
  'ties-too-far-apart',
  'no-tie-at-edge',
  'shallow-tie',
  'tie-near-face',
  'thin-tie',
  'weeps-too-far-apart',
  'blocked-weep',
  'no-flashing',
  'low-flashing',
  'short-flashing',
  'no-end-dam',
  'stale-mortar',
  'lean-mortar',
] as const;
export type CheckId = (typeof CHECKS)[number];

export const HAZARDS = ['could fall', 'lets water in', 'looks'] as const;
export type Hazard = (typeof HAZARDS)[number];

/** Whether a fault of this kind shows whole where it is found, or there is likely more of it where nobody sees it. */
export type Reach = 'in sight' | 'out of sight';

export type Region = FaceBox;

/** One thing wrong with the wall, measured from its geometry. */
export interface Finding {
  readonly check: CheckId;
  /** Ids of the parts concerned, the most telling first. */
  readonly parts: readonly PartId[];
  readonly region: Region;
  readonly measured: number;
  readonly unit: string;
  /** The bound that `measured` breaks, in `unit`. */
  readonly limit: number;
  /** Negative: how far beyond the limit, in `unit`. */
  readonly margin: number;
  readonly kind: LimitKind;
  readonly hazard: Hazard;
  readonly source: {
    readonly limit: string;
    /** The rule set the limit comes from; `good-practice` where the rule set in use is silent. */
    readonly rules: RuleSetId;
    readonly title: string;
    readonly edition: string;
    readonly clause: string;
    readonly howSure: HowSure;
  };
}
