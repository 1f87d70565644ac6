import { BY_DAY } from '../../lib/drawing/colours';
import type { Drawing } from '../../lib/drawing/shape';
import { svgFile } from '../../lib/drawing/svg-file';
import { svgBox, tenth } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import type { LengthSystem } from '../../lib/units';
import { spacingDimensions } from '../../lib/views/behind/tie-spacing';
import { drawingOf } from '../../lib/views/draw-view';
import { markOnSheet, markShapes } from '../../lib/views/pointing/mark-shapes';
import { wallColours } from '../../lib/views/wall-colours';
import {
  type LessonPicture,
  lessonFindings,
  lessonWall,
  type Ring,
  ringsOf,
  viewOf,
} from './lesson-pictures';

/** A close picture shows at least this much of the wall, mm. */
const CLOSE = { width: 1100, height: 640 };
const ROOM = 160;
const WIDTH = 1200;
/** Lengths and notes are lettered for a phone, px; a little smaller than the words beside, or they would fill the drawing. */
const PHONE = 430;
const TEXT = 13;

/** Numbers of rings have to be read on a phone: px where the drawing is 1200 px wide. */
const NUMBER_SIZE = 34;

/** The drawing of a lesson picture, as an SVG file, with its lengths in `system`. */
export function drawPicture(picture: LessonPicture, system: LengthSystem = 'mm'): string {
  const surveyed = lessonWall(picture);
  const drawing = drawingOf(surveyed, viewOf(picture), system);
  const rings = picture.ringed ? ringsOf(picture).map((ring) => ({ ...ring, state: 'mark' as const })) : [];
  const box = shownBox(picture, drawing);
  const spacing =
    picture.view === 'before-cover'
      ? spacingDimensions(surveyed.panels, drawing.frames, (box.width * TEXT) / PHONE, system)
      : { shapes: [], labels: [] };
  const shown = {
    ...drawing,
    box,
    shapes: [...drawing.shapes, ...spacing.shapes],
    labels: [...lettered(picture, drawing), ...(picture.close ? [] : spacing.labels)],
  };
  const svg = svgFile(
    shown,
    wallColours(surveyed.wall),
    WIDTH,
    (mmPerPx) => markShapes(drawing, rings, mmPerPx),
    PHONE,
  );
  const numbers = rings.map((ring) => numberOf(ring, drawing, box)).join('');
  return svg.replace('</svg>', `${numbers}</svg>`);
}

/** Nobody comes nearer to a still picture: what is only lettered up close stays away, and so does the word that says so. */
export function lettered({ close }: LessonPicture, { labels }: Drawing): Drawing['labels'] {
  return close ? [] : labels.filter(({ standsFor, plate, room }) => !(standsFor || (plate && room)));
}

/** What a picture shows of the sheet: all of it, or up close the place of the first fault. */
export function shownBox(picture: LessonPicture, drawing: Drawing): Box {
  const first = lessonFindings(picture.family)[0]?.region ?? ringsOf(picture)[0];
  const place =
    picture.close && first !== undefined
      ? markOnSheet(drawing, { ...first, number: 1, state: 'mark' }, 1)
      : null;
  return place === null ? drawing.box : around(place, drawing.box);
}

/** True where lengths are lettered on a picture, so that it is drawn in inches, too. */
export function hasLengths(picture: LessonPicture): boolean {
  return drawPicture(picture, 'mm') !== drawPicture(picture, 'inches');
}

/** The ring's number on a plate at its upper left corner, kept inside the picture. */
function numberOf(ring: Ring, drawing: Drawing, shown: Box): string {
  const size = (NUMBER_SIZE * shown.width) / WIDTH;
  const box = markOnSheet(drawing, { ...ring, state: 'mark' }, shown.width / WIDTH);
  if (box === null) return '';
  const x = Math.min(Math.max(box.x, shown.x + size), shown.x + shown.width - size);
  const y = Math.min(Math.max(box.y + box.height, shown.y + size), shown.y + shown.height - size);
  const [left, top] = svgBox({ x, y, width: 0, height: 0 });
  return `<circle cx="${left}" cy="${top}" r="${tenth(size * 0.7)}" fill="${BY_DAY['--chalk']}" stroke="#ffffff" stroke-width="${tenth(size * 0.08)}"/><text x="${left}" y="${tenth(top + size * 0.35)}" font-size="${tenth(size)}" font-weight="650" text-anchor="middle" fill="#ffffff">${ring.number}</text>`;
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
