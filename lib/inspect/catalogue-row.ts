import type { CheckId, Hazard, Reach } from './finding';
import type { LookAlikeId } from './look-alikes';

/** What kind of part a fault is marked on. A mark on any part of a panel or course is taken for the whole of it when the fault is that wide. */
export type Scope =
  | 'unit'
  | 'joint'
  | 'course'
  | 'panel'
  | 'corner'
  | 'edge'
  | 'support'
  | 'opening'
  | 'tie'
  | 'batch';

/** What a fault is easily confused with: another fault, or a thing that is right. */
export type MistakenFor = CheckId | LookAlikeId;

/**
 * One row of the fault catalogue. Plain words, short sentences and no figures: a figure comes from lib/limits, so that text and check cannot part.
 * Source: common practice of the trade, in our own words.
 */
export interface CatalogueRow {
  readonly name: string;
  /** Other words of the trade, North American and British, for the search. */
  readonly alsoCalled: readonly string[];
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
  readonly hazard: Hazard;
  readonly reach: Reach;
  readonly scope: Scope;
}
