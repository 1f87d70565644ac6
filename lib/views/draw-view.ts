import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { beforeCoverView } from './before-cover';
import { behindView } from './behind';
import { frontView } from './front';
import { sectionView } from './section';
import type { Drawing } from './shape';
import type { View } from './view';

/** The drawing of one view of a wall. @throws ViewError for a unit or a section that the wall has not. */
export function drawingOf(wall: Wall, view: View, system: LengthSystem): Drawing {
  switch (view.kind) {
    case 'front':
      return frontView(wall, system);
    case 'section':
      return sectionView(wall, view, system);
    case 'behind':
      return behindView(wall, view.unit, system);
    case 'before-cover':
      return beforeCoverView(wall, system);
    default: {
      const unknown: never = view;
      throw new RangeError(`view ${String(unknown)} is not drawn`);
    }
  }
}
