import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { frontView } from './front';
import type { Drawing } from './shape';
import type { View } from './view';

/** The drawing of one view of a wall. A view the wall has not (see viewsOf) shows its front. */
export function drawingOf(wall: Wall, view: View, system: LengthSystem): Drawing {
  switch (view.kind) {
    case 'front':
    case 'section':
    case 'behind':
    case 'before-cover':
      return frontView(wall, system);
    default: {
      const unknown: never = view;
      throw new RangeError(`view ${String(unknown)} is not drawn`);
    }
  }
}
