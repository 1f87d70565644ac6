import type { Limit, RuleSetId } from '../limits/limit';
import type { Survey } from '../wall/survey';
import type { CheckId, Region } from './finding';

/** Where a measurement was taken: parts, the most telling first, and their box on the face. */
export interface Place {
  readonly parts: readonly string[];
  readonly region: Region;
}

/** One thing measured and held against its limit. A value exactly at the bound passes. */
export interface Sight {
  readonly limit: Limit;
  /** Which way the bound works for this measurement. */
  readonly end: 'at most' | 'at least';
  readonly measured: number;
  readonly bound: number;
  /** Id of the part it was measured at. */
  readonly at: string;
  readonly place: () => Place;
  /** Unit of `measured` where it is not the limit's. */
  readonly unit?: string;
}

/** A check shows every measurement it takes, sound ones too: the key, the doubt law and the explanations read the same run. */
export type See = (sight: Sight) => void;

export interface Check {
  readonly id: CheckId;
  readonly measure: (survey: Survey, rules: RuleSetId, see: See) => void;
}

export function passes({ end, measured, bound }: Pick<Sight, 'end' | 'measured' | 'bound'>): boolean {
  return end === 'at most' ? measured <= bound : measured >= bound;
}

/** How far within the limit; negative beyond it. */
export function marginOf({ end, measured, bound }: Pick<Sight, 'end' | 'measured' | 'bound'>): number {
  return end === 'at most' ? bound - measured : measured - bound;
}

/** How bad: over 1 beyond the limit. For comparing sights of one check. */
export function severityOf({ end, measured, bound }: Pick<Sight, 'end' | 'measured' | 'bound'>): number {
  if (end === 'at most') return bound > 0 ? measured / bound : measured > 0 ? Number.MAX_VALUE : 0;
  return measured > 0 ? bound / measured : Number.MAX_VALUE;
}
