import { drawingOf } from '../../lib/views/draw-view';
import { markOnSheet } from '../../lib/views/mark-shapes';
import { svgOf } from '../../lib/views/print-svg';
import type { Box } from '../../lib/views/shape';
import { svgBox } from '../../lib/views/svg-nodes';
import { type LessonPicture, lessonFindings, lessonWall, ringsOf, viewOf } from './lesson-pictures';

/** A close picture shows at least this much of the wall, mm. */
const CLOSE = { width: 1100, height: 640 };
const ROOM = 160;
const WIDTH = 1200;

/** The drawing of a lesson picture, as an SVG file. */
export function drawPicture(picture: LessonPicture): string {
  const wall = lessonWall(picture);
  const view = viewOf(picture);
  const marks = picture.ringed ? ringsOf(picture).map((ring) => ({ ...ring, state: 'mark' as const })) : [];
  const svg = svgOf(wall, view, marks);
  const [first] = lessonFindings(picture.family);
  if (!picture.close || first === undefined) return svg;

  const drawing = drawingOf(wall, view, 'mm');
  const place = markOnSheet(drawing, { ...first.region, number: 1, state: 'mark' }, 1);
  if (place === null) return svg;
  const [x, y, width, height] = svgBox(around(place, drawing.box));
  return svg.replace(
    /viewBox="[^"]*" width="[^"]*" height="[^"]*"/,
    `viewBox="${x} ${y} ${width} ${height}" width="${WIDTH}" height="${Math.round((WIDTH * height) / width)}"`,
  );
}

/** A part of the sheet round a place, not past the sheet's edge. */
function around(place: Box, sheet: Box): Box {
  const width = Math.min(Math.max(place.width + 2 * ROOM, CLOSE.width), sheet.width);
  const height = Math.min(Math.max(place.height + 2 * ROOM, CLOSE.height), sheet.height);
  const within = (middle: number, size: number, from: number, whole: number) =>
    Math.min(Math.max(middle - size / 2, from), from + whole - size);
  return {
    x: within(place.x + place.width / 2, width, sheet.x, sheet.width),
    y: within(place.y + place.height / 2, height, sheet.y, sheet.height),
    width,
    height,
  };
}

/** Width and height of a drawn picture, px, so that the page keeps its place before the drawing is there. */
export function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width = '1200', height = '800'] = /<svg[^>]* width="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}
