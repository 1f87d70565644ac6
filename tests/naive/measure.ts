import type { RuleSetId } from '../../lib/limits/limit';
import type { Wall } from '../../lib/wall/model';
import { measureBacks } from './back';
import { measureBond } from './bond';
import { measureFaces } from './face';
import { measureJoints } from './joints';
import { measureLines } from './line';
import { measureMortar } from './mortar';
import type { NaiveFinding } from './naive-finding';
import { measureSupports } from './support';
import { measureTies } from './ties';

/**
 * A second opinion on every wall, worked out from the definitions and the limits alone with plain loops. It shares nothing
 * with the inspection but the model and the limits, so that a slip in either shows. In no particular order.
 */
export function measureNaively(wall: Wall, rules: RuleSetId): readonly NaiveFinding[] {
  return [
    ...measureBacks(wall, rules),
    ...measureJoints(wall, rules),
    ...measureLines(wall, rules),
    ...measureFaces(wall, rules),
    ...measureBond(wall, rules),
    ...measureSupports(wall, rules),
    ...measureTies(wall, rules),
    ...measureMortar(wall, rules),
  ];
}
