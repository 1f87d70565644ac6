import type { Limit, Limits } from '../limits/limit';
import type { PartId, PartKind } from '../wall/part-id';
import type { Survey } from '../wall/survey';
import type { CheckId, Hazard, Reach, Region } from './finding';
import type { LookAlikeId } from './look-alikes';

/** What a fault is easily confused with: another fault, or a thing that is right. */
export type MistakenFor = CheckId | LookAlikeId;

/** What a reader measures for a fault: the quantity of its finding, in plain words, and its unit. */
export interface AskedReading {
  readonly what: string;
  readonly unit: '%' | 'mm' | 'mm per 4 courses' | 'mm per m' | 'minutes' | 'volumes' | 'there or not';
}

/**
 * All that inspection knows of one fault. Its words are plain and hold no figures: a figure comes from lib/limits, so that text and check cannot
 * part. Source of the words: common practice of the trade, in our own words.
 */
export interface Check {
  readonly id: CheckId;
  readonly name: string;
  /** Other words of the trade, North American and British, for the search: separated by commas. */
  readonly alsoCalled: string;
  /** One sentence: what you see. */
  readonly looksLike: string;
  /** The view that shows it: front, section, behind a lifted unit, before cover, mixing ticket. */
  readonly whereToLook: string;
  /** One sentence: how it is measured. */
  readonly measuredBy: string;
  /** One or two sentences. */
  readonly whyItMatters: string;
  /** Who does what. Work for a licensed engineer is named as such. */
  readonly putsRight: string;
  /** The hold point, a short phrase: the last moment it can be seen, or put right with little work. */
  readonly caughtAt: string;
  readonly mistakenFor: readonly MistakenFor[];
  /** It is of a whole face, or of what carries it: on a panel that has this fault or one of these, nothing only looks like it. */
  readonly ofPanel?: readonly CheckId[];
  /**
   * The kinds of part that can have the fault: what a mark goes on. The first part of each of its findings is of one of them. A mark on any
   * part of a panel or course is taken for the whole of it when the fault is that wide.
   */
  readonly markedOn: readonly PartKind[];
  readonly hazard: Hazard;
  readonly reach: Reach;
  /** The lesson that has a passage on it, under "What goes wrong". */
  readonly lesson: string;
  /** A finding in another unit is not asked for: a back that fails by its largest bare area, which few would count. */
  readonly asks: AskedReading;
  /**
   * How near its limit a measurement is too near to call, in the unit of the measurement: what the instrument that reads it can tell, and a
   * margin. No laid wall has such a one. 0 for what is there or not, or comes in listed sizes. Readings of a tape ±1 mm, level ±0.5 mm/m,
   * feeler ±0.2 mm are common practice.
   */
  readonly tooNear: number;
  /** Reports every measurement it takes, sound ones too: the key, the doubt law and the explanations read the same run. */
  readonly measure: (survey: Survey, limits: Limits, report: Report) => void;
}

export type Report = (measurement: Measurement) => void;

/** One thing measured and held against its limit. A value exactly at the bound passes. */
export interface Measurement {
  readonly limit: Limit;
  /** Which way the bound works for this measurement. */
  readonly end: 'at most' | 'at least';
  readonly measured: number;
  readonly bound: number;
  /** Id of the part it was measured at. */
  readonly at: PartId;
  readonly place: () => Place;
  /** Unit of `measured` where it is not the limit's. */
  readonly unit?: string;
}

/** Where a measurement was taken: parts, the most telling first, and their box on the face. */
export interface Place {
  readonly parts: readonly PartId[];
  readonly region: Region;
}

type Held = Pick<Measurement, 'end' | 'measured' | 'bound'>;

export function passes({ end, measured, bound }: Held): boolean {
  return end === 'at most' ? measured <= bound : measured >= bound;
}

/** How far within the limit; negative beyond it. */
export function marginOf({ end, measured, bound }: Held): number {
  return end === 'at most' ? bound - measured : measured - bound;
}

/** How bad: over 1 beyond the limit. For comparing measurements of one check. */
export function severityOf({ end, measured, bound }: Held): number {
  if (end === 'at most') return bound > 0 ? measured / bound : measured > 0 ? Number.MAX_VALUE : 0;
  return measured > 0 ? bound / measured : Number.MAX_VALUE;
}
