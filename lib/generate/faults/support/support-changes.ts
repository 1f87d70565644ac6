import type { Panel, Support, Wall } from '../../../wall/model';
import { NoRoom, type SpoilInput, type Spot } from '../../spoil-input';

/** Supports are spoiled one way each: their spot is named after them and lies on no panel. */
export function supportSpot(support: Support): Spot {
  return { panel: support.id, x: 0, y: 0, width: 0, height: 0 };
}

export function replaceSupport(wall: Wall, old: Support, by: readonly Support[]): Wall {
  return { ...wall, supports: wall.supports.flatMap((support) => (support === old ? by : [support])) };
}

/** Panels none of whose supports was measured for a departure: a lean moves what stands on them. */
export function freeOfSupports({ wall, taken }: SpoilInput): (panel: Panel) => boolean {
  const touched = new Set(taken.map(({ panel }) => panel));
  return ({ id }) => !wall.supports.some((support) => support.panel === id && touched.has(support.id));
}

/** The first lintel that no other fault has touched. @throws NoRoom when none is left. */
export function lintelLeft({ wall, taken }: SpoilInput): Support {
  const isFree = ({ kind, id }: Support) => kind === 'lintel' && !taken.some(({ panel }) => panel === id);
  const lintel = wall.supports.find(isFree);
  if (lintel === undefined) throw new NoRoom('no lintel left');
  return lintel;
}
