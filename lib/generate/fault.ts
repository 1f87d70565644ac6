import type { CheckId } from '../inspect/finding';
import type { LimitId, RuleSetId } from '../limits/limit';
import type { WallKind } from '../wall/model';
import type { Spoiled, SpoilInput } from './spoil-input';

/** All that generation knows of one fault: the walls it fits, and how it spoils one. */
export interface Fault {
  readonly id: CheckId;
  /** Any kind where left out. */
  readonly kinds?: readonly WallKind[];
  /** Either where left out. */
  readonly masonry?: 'anchored' | 'adhered';
  /** Severities over this would break another limit as well; over 4 where left out. */
  readonly most?: number;
  /** Severities under this could not be told from sound work by the instrument, natural scatter counted; any over 1.15 where left out. */
  readonly least?: number;
  /** Sound work departs the same way by up to this severity; never where left out. */
  readonly tolerated?: number;
  /** What the wall has to be laid like from the start. */
  readonly needs?: readonly Need[];
  /** A fault of a whole face, which is laid before any of single units: it moves them all a little. */
  readonly ofFace?: true;
  /** There is no room for it on walls of this kind under these rules. */
  readonly never?: { readonly kind: WallKind; readonly rules: RuleSetId };
  /** There is no such fault under rules without this limit. */
  readonly limit?: LimitId;
  /** Spoils a wall in one way. @throws NoRoom where the wall has no place for it. */
  readonly spoil: (input: SpoilInput) => Spoiled;
}

/**
 * Half lap, since it leans on it: a tipped unit, a drift, a raking end. No quoins and no soldiers, which cannot follow courses that move by a little
 * each. Units too thin to be raked.
 */
export type Need = 'half lap' | 'no tall units' | 'thin units';

/** A fault is at least so far past its limit, where no instrument asks for more. */
export const LEAST_SEVERITY = 1.15;
/** And at most so far, where no other limit is broken before. */
export const MOST_SEVERITY = 4;

/** Where the courses of one panel can move without leaving those of another at a corner. */
export const NO_CORNER: readonly WallKind[] = ['plain-panel', 'window-panel', 'gable-end'];
export const WITH_OPENING: readonly WallKind[] = ['window-panel', 'door-corner'];
