import type { Drawing } from '../../drawing/shape';
import type { LengthSystem } from '../../units';
import type { SurveyedWall } from '../../wall/surveyed';
import { type View, ViewError } from '../view';
import { UP_CLOSE, type ViewingConditions } from '../viewing-conditions';
import { frontView } from './front';

/** Draws a view of a wall. */
export type Draw = (
  surveyed: SurveyedWall,
  view: View,
  system: LengthSystem,
  viewing?: ViewingConditions,
) => Drawing;

/** Draws the front alone: a page that shows no other look need not fetch what draws them. @throws ViewError for any other view. */
export function drawFront(
  surveyed: SurveyedWall,
  view: View,
  system: LengthSystem,
  viewing: ViewingConditions = UP_CLOSE,
): Drawing {
  if (view.kind !== 'front') throw new ViewError(`view: what draws "${view.kind}" is not here`);
  return frontView(surveyed, system, viewing);
}
