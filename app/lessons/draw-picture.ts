import { BY_DAY } from '../../lib/drawing/colours';
import type { Drawing } from '../../lib/drawing/shape';
import { svgBox, tenth } from '../../lib/drawing/svg-nodes';
import type { Box } from '../../lib/geometry/box';
import { drawingOf } from '../../lib/views/draw-view';
import { markOnSheet } from '../../lib/views/pointing/mark-shapes';
import { svgOf } from '../../lib/views/print-svg';
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

/** Numbers of rings, and the lettering of sections, have to be read on a phone: px where the drawing is 1200 px wide. */
const NUMBER_SIZE = 34;
const LETTERING = 2.8;

/** The drawing of a lesson picture, as an SVG file. */
export function drawPicture(picture: LessonPicture): string {
  const wall = lessonWall(picture);
  const view = viewOf(picture);
  const rings = picture.ringed ? ringsOf(picture) : [];
  const svg = svgOf(
    wall,
    view,
    rings.map((ring) => ({ ...ring, state: 'mark' as const })),
  );
  if (picture.view === 'section' || picture.view === 'behind') return largerLettering(svg);
  const drawing = drawingOf(wall, view, 'mm');
  const first = lessonFindings(picture.family)[0]?.region ?? ringsOf(picture)[0];
  const place =
    picture.close && first !== undefined
      ? markOnSheet(drawing, { ...first, number: 1, state: 'mark' }, 1)
      : null;
  const shown = place === null ? drawing.box : around(place, drawing.box);
  const numbers = rings.map((ring) => numberOf(ring, drawing, shown)).join('');
  // A row of ties has a label each: they would lie over one another.
  const lettered = picture.view === 'front' ? largerLettering(svg) : svg;
  return framed(lettered, shown).replace('</svg>', `${numbers}</svg>`);
}

/** The lengths lettered on a picture, in inches, each once. A close picture shows a part of the sheet, without them. */
export function inchesOn(picture: LessonPicture): readonly string[] {
  if (picture.close) return [];
  const { labels } = drawingOf(lessonWall(picture), viewOf(picture), 'inches');
  return [...new Set(labels.map(({ text }) => text).filter((text) => /\d (in|ft)\b/.test(text)))];
}

function framed(svg: string, shown: Box): string {
  const [x, y, width, height] = svgBox(shown);
  return svg.replace(
    /viewBox="[^"]+" width="\d+" height="\d+"/,
    `viewBox="${x} ${y} ${width} ${height}" width="${WIDTH}" height="${Math.round((WIDTH * height) / width)}"`,
  );
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

function largerLettering(svg: string): string {
  return svg.replace(/font-size="([\d.]+)"/g, (_, size) => `font-size="${tenth(Number(size) * LETTERING)}"`);
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
