import type { CheckId } from '../inspect/finding';
import type { LimitId } from '../limits/limit';
import type { WallKind } from '../wall/model';
import type { Spoiled, SpoilInput } from './spoil-input';

/** All that generation knows of one fault: the walls it fits, and how it spoils one. */
export interface Fault {
  readonly id: CheckId;
  readonly kinds: readonly WallKind[];
  readonly masonry: readonly ('anchored' | 'adhered')[];
  /** Severities over this would break another limit as well. */
  readonly most: number;
  /** What the wall has to be laid like from the start. */
  readonly needs?: readonly Need[];
  /** There is no such fault under rules without this limit. */
  readonly limit?: LimitId;
  /** Spoils a wall in one way. @throws NoRoom where the wall has no place for it. */
  readonly spoil: (input: SpoilInput) => Spoiled;
}

/**
 * Half lap, since it leans on it: a tipped unit, a drift, a raking end. No quoins, which cannot follow courses that move by a little each. Units
 * too thin to be raked.
 */
export type Need = 'half lap' | 'no quoins' | 'thin units';

export const NO_OPENING: readonly WallKind[] = ['plain-panel', 'gable-end'];
export const WITH_OPENING: readonly WallKind[] = ['window-panel', 'door-corner'];
