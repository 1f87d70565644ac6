import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { aboveView } from './above';
import { beforeCoverView } from './before-cover';
import { behindView } from './behind';
import { belowView } from './below';
import { frontView } from './front';
import { type Looking, UP_CLOSE } from './looking';
import { sectionView } from './section';
import type { Drawing } from './shape';
import { sideView } from './side';
import { ticketsView } from './tickets';
import type { View } from './view';

/** The drawing of one view of a wall; light and distance tell only from in front. @throws ViewError for a place that the wall has not. */
export function drawingOf(
  wall: Wall,
  view: View,
  system: LengthSystem,
  looking: Looking = UP_CLOSE,
): Drawing {
  switch (view.kind) {
    case 'front':
      return frontView(wall, system, looking);
    case 'side-section':
      return sideView(wall, view, system);
    case 'section':
      return sectionView(wall, view, system);
    case 'above':
      return aboveView(wall, view, system);
    case 'below':
      return belowView(wall, view, system);
    case 'behind':
      return behindView(wall, view.unit, system);
    case 'before-cover':
      return beforeCoverView(wall, system);
    case 'tickets':
      return ticketsView(wall);
    default: {
      const unknown: never = view;
      throw new RangeError(`view ${String(unknown)} is not drawn`);
    }
  }
}
