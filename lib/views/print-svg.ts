import type { Drawing } from '../drawing/shape';
import { svgFile } from '../drawing/svg-file';
import type { LengthSystem } from '../units';
import type { SurveyedWall } from '../wall/surveyed';
import { drawingOf } from './draw-view';
import { frontPicture } from './front/front';
import { parseView } from './parse-view';
import { type MarkBox, markShapes } from './pointing/mark-shapes';
import type { View } from './view';
import { UP_CLOSE, type ViewingConditions } from './viewing-conditions';
import { wallColours } from './wall-colours';

/** Width on paper or on a page that text is sized for, px. */
const WIDTH = 1200;

/**
 * A whole SVG file of one view, by day, with every colour in it; `marks` are boxes on a panel's face, drawn where the view shows
 * that face. Lengths in `system`, seen as `viewing` says.
 */
export function svgOf(
  surveyed: SurveyedWall,
  view: View,
  marks: readonly MarkBox[] = [],
  system: LengthSystem = 'mm',
  viewing: ViewingConditions = UP_CLOSE,
): string {
  return fileOf(surveyed, drawingOf(surveyed, view, system, viewing), marks);
}

/** A whole SVG file of the wall from in front by day, with no dimensions: for a page that shows it small. */
export function pictureOf(surveyed: SurveyedWall): string {
  return fileOf(surveyed, frontPicture(surveyed), []);
}

function fileOf({ wall }: SurveyedWall, drawing: Drawing, marks: readonly MarkBox[]): string {
  return svgFile(drawing, wallColours(wall), WIDTH, (mmPerPx) => markShapes(drawing, marks, mmPerPx));
}

/** A whole SVG file of the view named in a text, as parseView reads it. @throws ViewError */
export function printSvg(surveyed: SurveyedWall, view: string, system: LengthSystem = 'mm'): string {
  return svgOf(surveyed, parseView(surveyed.wall, view), [], system);
}
