import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { frontView } from './front';
import { type Looking, UP_CLOSE } from './looking';
import type { Drawing } from './shape';
import { type View, ViewError } from './view';

/** Draws a view of a wall. */
export type Draw = (wall: Wall, view: View, system: LengthSystem, looking?: Looking) => Drawing;

/** Draws the front alone: a page that shows no other look need not fetch what draws them. @throws ViewError for any other view. */
export function drawFront(
  wall: Wall,
  view: View,
  system: LengthSystem,
  looking: Looking = UP_CLOSE,
): Drawing {
  if (view.kind !== 'front') throw new ViewError(`view: what draws "${view.kind}" is not here`);
  return frontView(wall, system, looking);
}
