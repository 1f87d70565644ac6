import type { Support, Wall } from '../../../wall/model';
import type { Spot } from '../../spoil-input';

/** Supports are spoiled one way each: their spot is named after them and lies on no panel. */
export function supportSpot(support: Support): Spot {
  return { panel: support.id, x: 0, y: 0, width: 0, height: 0 };
}

export function replaceSupport(wall: Wall, old: Support, by: readonly Support[]): Wall {
  return { ...wall, supports: wall.supports.flatMap((support) => (support === old ? by : [support])) };
}
