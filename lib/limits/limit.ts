import type { Mm } from '../units';

/** Rule sets a wall can be judged by. `good-practice` also applies wherever another set is silent, and is always shown as such. */
export const RULE_SETS = ['canada', 'ontario', 'united-states', 'united-kingdom', 'good-practice'] as const;
export type RuleSetId = (typeof RULE_SETS)[number];

export type LimitKind = 'code minimum' | 'standard tolerance' | 'good practice' | 'looks';

/** How the figure is known. Nothing marked `memory` may decide a pass or fail. */
export const HOW_SURE = ['read', 'second-hand', 'worked out', 'common practice', 'memory'] as const;
export type HowSure = (typeof HOW_SURE)[number];

export type LimitTopic =
  | 'back mortar'
  | 'joints'
  | 'line'
  | 'bond'
  | 'support'
  | 'openings'
  | 'ties'
  | 'mortar'
  | 'water'
  | 'weather'
  | 'height and thickness'
  | 'movement'
  | 'judging the face'
  | 'keeping people away';

/** A point of a stepped limit: it holds up to and including `upTo` (the last step has `upTo: Infinity`, printed as null). */
export interface Step {
  readonly upTo: number;
  readonly value: number;
}

/** One row of a steel angle table: legs and thickness in mm, and the longest clear span in mm it may carry. */
export interface AngleRow {
  readonly vertical: Mm;
  readonly horizontal: Mm;
  readonly thickness: Mm;
  /** Longest clear span by case; a missing case is not permitted. Cases are named by the table. */
  readonly spans: Readonly<Record<string, Mm>>;
}

/** One allowed combination of tie spacings: vertical and horizontal, both at most. */
export interface TieRow {
  readonly vertical: Mm;
  readonly horizontal: Mm;
}

/** One row of a mortar proportion table, volumes as batched; sand damp and loose. */
export interface MortarRow {
  readonly type: string;
  readonly portland: number;
  readonly lime: readonly [least: number, most: number];
  readonly masonryCement: string | null;
  readonly masonryCementVolume: number;
  readonly sand: readonly [least: number, most: number];
}

export type Bound =
  /** One number. */
  | { readonly form: 'number'; readonly value: number }
  /** A share of the unit's bed depth, for example a third of the thickness. */
  | { readonly form: 'share-of-depth'; readonly share: number }
  /** Depends on a size of the thing measured; steps in rising order. */
  | {
      readonly form: 'stepped';
      readonly by: 'unit depth' | 'clear span' | 'air temperature' | 'storeys above';
      readonly steps: readonly Step[];
    }
  /** So much in any run of a given length, and so much overall: the step tolerances for level, plumb and line. */
  | {
      readonly form: 'any-run';
      readonly runs: readonly { readonly run: Mm; readonly value: Mm }[];
      readonly overall: Mm;
    }
  /** So much in a run, in proportion when shorter, and a flat value when longer. */
  | { readonly form: 'pro-rata'; readonly run: Mm; readonly value: Mm; readonly beyond: Mm }
  /** The thing must be there. */
  | { readonly form: 'present' }
  | {
      readonly form: 'angle-table';
      readonly caseBy: 'unit depth' | 'storeys above';
      readonly rows: readonly AngleRow[];
    }
  | { readonly form: 'tie-rows'; readonly rows: readonly TieRow[] }
  /** Both spacings and the wall area of each tie (mm²) must hold. */
  | { readonly form: 'tie-area'; readonly vertical: Mm; readonly horizontal: Mm; readonly area: number }
  | { readonly form: 'mortar-table'; readonly rows: readonly MortarRow[] };

/** The limits that checks ask for, in the order a reader meets them. A file of `lib/limits` may hold others, which are shown only. */
export const CHECK_LIMITS = [
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
  'tie-cover',
  'tie-thickness',
  'tie-width',
  'weep-spacing',
  'weep-size',
  'flashing-present',
  'flashing-upstand',
  'flashing-past-face',
  'end-dam',
  'mortar-life',
  'sand-ratio',
] as const;
export type LimitId = (typeof CHECK_LIMITS)[number];

/** What governs under one rule set: its own limit, else that of good practice, else undefined. */
export type Limits = (id: LimitId) => Limit | undefined;

export interface Limit {
  /** A LimitId, or another name for a limit that no check uses yet. */
  readonly id: LimitId | (string & {});
  readonly rules: RuleSetId;
  readonly topic: LimitTopic;
  /** What is limited, in plain words, where from and where to. */
  readonly quantity: string;
  readonly unit:
    | 'mm'
    | 'mm²'
    | '%'
    | 'minutes'
    | 'mm per 4 courses'
    | 'mm per m'
    | 'volumes'
    | 'there or not'
    | 'm'
    | '°C'
    | 'hours'
    | 'days'
    /** Times something: which, the quantity says. */
    | 'times'
    | 'units'
    | 'per m²'
    | 'kg/m²'
    | 'g/m²'
    | 'MPa'
    | 'table';
  /** A value exactly at the bound passes. */
  readonly end: 'at most' | 'at least' | 'is';
  readonly bound: Bound;
  readonly kind: LimitKind;
  /** Key into the bibliography. */
  readonly source: string;
  readonly edition: string;
  readonly clause: string;
  readonly howSure: HowSure;
  /** Conflict and choice, or a caution; our own words. */
  readonly note?: string;
}

/** A source of limits. */
export interface Source {
  readonly key: string;
  readonly title: string;
  readonly publisher: string;
  /** How it was read: primary text, faithful copy, or second-hand. */
  readonly read: string;
  /** A later edition that is known to be out, and was not read. */
  readonly newer?: string;
}
