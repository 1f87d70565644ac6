import type { Drawing } from '../drawing/shape';
import type { LengthSystem } from '../units';
import type { SurveyedWall } from '../wall/surveyed';
import { beforeCoverView } from './behind/before-cover';
import { behindView } from './behind/behind';
import { frontView } from './front/front';
import { aboveView } from './plan/above';
import { belowView } from './plan/below';
import { sectionView } from './section/section';
import { sideView } from './section/side';
import { ticketsView } from './tickets/tickets';
import type { View } from './view';
import { UP_CLOSE, type ViewingConditions } from './viewing-conditions';

/** The drawing of one view of a wall; light and distance only matter from in front. @throws ViewError for a place that is not on the wall. */
export function drawingOf(
  surveyed: SurveyedWall,
  view: View,
  system: LengthSystem,
  viewing: ViewingConditions = UP_CLOSE,
): Drawing {
  switch (view.kind) {
    case 'front':
      return frontView(surveyed, system, viewing);
    case 'side-section':
      return sideView(surveyed, view, system);
    case 'section':
      return sectionView(surveyed, view, system);
    case 'above':
      return aboveView(surveyed, view, system);
    case 'below':
      return belowView(surveyed, view, system);
    case 'behind':
      return behindView(surveyed, view.unit, system);
    case 'before-cover':
      return beforeCoverView(surveyed, system);
    case 'tickets':
      return ticketsView(surveyed);
    default: {
      const unknown: never = view;
      throw new RangeError(`view ${String(unknown)} is not drawn`);
    }
  }
}
