import { shapesIn } from '../../lib/drawing/shapes-in';
import { svgFile } from '../../lib/drawing/svg-file';
import { layByCode, layWithoutFaults } from '../../lib/engines/engines';
import { keyOf } from '../../lib/exercise/key';
import type { Brief } from '../../lib/generate/brief';
import type { Box } from '../../lib/geometry/box';
import { drawingOf } from '../../lib/views/draw-view';
import { markOnSheet, markShapes } from '../../lib/views/pointing/mark-shapes';
import { wallColours } from '../../lib/views/wall-colours';
import { surveyedWall } from '../../lib/wall/surveyed';
import { placeFile, SIDES } from '../../lib/wall-page/place-file';
import { viewKeyFor, viewOf } from '../../lib/wall-page/view-choices';

/** A picture shows at least so high a part of a wall, mm, with room round the place, and is this wide, px. */
const LEAST = 440;
const ROOM = 110;
const WIDTH = 480;

/** The place of a fault on a wall, or the same place of its sound twin, at the same scale; null where no such fault is measured. */
export function placePicture(brief: Brief, file: string): string | null {
  const key = keyOf(surveyedWall(layByCode(brief).wall), brief.rules);
  const side = SIDES.find((each) => file.endsWith(`.${each}.svg`));
  const finding = side && key.findings.find((each) => placeFile(each, side) === file);
  if (finding === undefined) return null;
  const system = brief.rules === 'united-states' ? 'inches' : 'mm';
  const view = viewOf(viewKeyFor(finding, key.wall), finding.parts[0] ?? '', key.wall);
  const drawn = drawingOf(key, view, system);
  const mark = { ...finding.region, part: finding.parts[0] ?? '', number: 1, state: 'mark' as const };
  const place = markOnSheet(drawn, mark, 1);
  const box = place === null ? drawn.box : around(place, drawn.box);
  const shown = side === 'sound' ? surveyedWall(layWithoutFaults(brief)) : key;
  const drawing = side === 'sound' ? drawingOf(shown, view, system) : drawn;
  return svgFile(
    { ...drawing, box, shapes: shapesIn(drawing.shapes, box), labels: [] },
    wallColours(shown.wall),
    WIDTH,
    (mmPerPx) => (view.kind === 'behind' ? [] : markShapes(drawn, [mark], mmPerPx)),
  );
}

/** A part of the sheet round a place, three to two, not past the sheet's edge. */
function around(place: Box, sheet: Box): Box {
  const height = Math.max(place.height + 2 * ROOM, LEAST, (place.width + 2 * ROOM) / 1.5);
  const size = { width: Math.min(height * 1.5, sheet.width), height: Math.min(height, sheet.height) };
  const within = (middle: number, length: number, from: number, whole: number) =>
    Math.min(Math.max(middle - length / 2, from), from + whole - length);
  return {
    x: within(place.x + place.width / 2, size.width, sheet.x, sheet.width),
    y: within(place.y + place.height / 2, size.height, sheet.y, sheet.height),
    ...size,
  };
}
