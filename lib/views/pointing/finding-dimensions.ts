import { ring } from '../../drawing/rings';
import {
  type Drawing,
  type Frame,
  type Label,
  onSheet,
  type Pen,
  type Pieces,
  type Shape,
} from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { Point, Ring } from '../../geometry/polygon';
import { formatInches, formatLength, inches, type LengthSystem, MM_PER_M } from '../../units';
import type { SurveyedWall } from '../../wall/surveyed';
import type { FindingDimension } from './finding-dimension';
import { type Span, spansOf } from './finding-spans';
import { caliper } from './part-readouts';

/** Half the length of a tick, and from a line to its words, px. */
const TICK = 6;
const AWAY = 16;
/** Width of a sign of a label, px, as its plate reckons it: 0.6 of a height of 13. */
const SIGN = 7.8;
/** From one line of words to the next, px. */
const LINE = 20;
/** From where a label is held to its middle, in its widths. */
const SIDES = { start: 0.5, middle: 0, end: -0.5 } as const;

/**
 * Dimension lines where the measuring was done, with number and measure; where a measure has no two ends on the face (how far a unit
 * stands out, a share), words with a line to the place; so too where the view shows not the face but the part. Else nothing.
 */
export function findingDimensions(
  surveyed: SurveyedWall,
  drawing: Drawing,
  dimensions: readonly FindingDimension[],
  mmPerPx: number,
  system: LengthSystem,
): Pieces {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  for (const each of dimensions) {
    const frame = drawing.frames.find(({ panel }) => panel === each.region.panel);
    const text = `${each.number}: ${measureText(each, system)}`;
    if (frame === undefined) {
      const spot = drawing.spots.find(({ part }) => each.parts.includes(part));
      if (spot === undefined) continue;
      const note = noteAt(spot, drawing.box, text, mmPerPx);
      shapes.push(...note.shapes);
      labels.push(note.label);
      continue;
    }
    const spans = spansOf(surveyed, each);
    const [first] = spans;
    for (const span of spans) {
      shapes.push(...spanShapes(span, frame, mmPerPx));
      if (span.side) labels.push(endLabel(span, span.side, frame, mmPerPx, system));
    }
    if (first === undefined || first.side) {
      const note = noteAt(onSheet(frame, each.region), drawing.box, text, mmPerPx);
      shapes.push(...note.shapes);
      labels.push(note.label);
    } else {
      labels.push(spanLabel(first, frame, text, mmPerPx));
    }
  }
  return {
    shapes,
    labels: apart(
      labels.map((label) => inside(label, drawing.box, mmPerPx)),
      mmPerPx,
    ),
  };
}

/** Words that would lie on others about the same height stand a line lower. */
function apart(labels: readonly Label[], mmPerPx: number): readonly Label[] {
  const wide = ({ text }: Label) => text.length * SIGN * mmPerPx;
  const middle = (label: Label) => label.at[0] + SIDES[label.anchor] * wide(label);
  const line = LINE * mmPerPx;
  const placed: Label[] = [];
  for (const label of labels) {
    const lies = (on: Label, y: number) =>
      Math.abs(middle(on) - middle(label)) < (wide(on) + wide(label)) / 2 && Math.abs(on.at[1] - y) < line;
    let y = label.at[1];
    // Words between two lines hold up two steps.
    for (let step = 0; step < 2 * placed.length && placed.some((on) => lies(on, y)); step++) y -= line;
    placed.push({ ...label, at: [label.at[0], y] });
  }
  return placed;
}

/** Words moved along until they stand on the sheet from end to end. */
function inside(label: Label, sheet: Box, mmPerPx: number): Label {
  const wide = Math.min(label.text.length * SIGN * mmPerPx, sheet.width);
  const toMiddle = SIDES[label.anchor] * wide;
  const [x, y] = label.at;
  const middle = Math.max(x + toMiddle, sheet.x + wide / 2);
  return { ...label, at: [Math.min(middle, sheet.x + sheet.width - wide / 2) - toMiddle, y] };
}

/** "16.2 mm" or "5/8 in"; "73 %", "4.9 mm per m" or "9/16 in per 10 ft". */
export function measureText(
  { check, measured, unit, source }: FindingDimension,
  system: LengthSystem,
): string {
  if (check === 'thin-tie') return caliper(measured, system);
  if (unit === 'mm') {
    const offMean = source?.limit === 'bed-from-mean-of-eight' ? ' off the mean' : '';
    return `${formatLength(measured, system)}${offMean}`;
  }
  if (unit === 'mm per 4 courses') return `${formatLength(measured, system)} over 4 courses`;
  if (unit === 'mm per m' && system === 'inches') {
    return `${formatInches((measured * inches(0, 10)) / MM_PER_M)} per 10 ft`;
  }
  const tenths = Math.round(measured * 10) / 10;
  return unit === '' ? `${tenths}` : `${tenths} ${unit}`;
}

function pointOnSheet({ x, y, scale }: Frame, [px, py]: Point): Point {
  return [x + scale * px, y + scale * py];
}

function spanShapes(span: Span, frame: Frame, mmPerPx: number): readonly Shape[] {
  const from = pointOnSheet(frame, span.from);
  const to = pointOnSheet(frame, span.to);
  const lies = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
  const reach = TICK * mmPerPx;
  const tick = ([x, y]: Point): Ring =>
    lies ? ring(x, y - reach, x, y + reach) : ring(x - reach, y, x + reach, y);
  const base = (span.base ?? []).map((point) => pointOnSheet(frame, point));
  return [...(base.length > 0 ? haloed([base], [8, 4]) : []), ...haloed([[from, to], tick(from), tick(to)])];
}

/** Lines seen on light and dark alike. */
function haloed(rings: readonly Ring[], dash?: readonly number[]): readonly Shape[] {
  const pen: Pen = { paint: '--ink', width: 2, thin: true, ...(dash ? { dash } : {}) };
  return [
    { kind: 'area', rings, open: true, pen: { paint: '--raised', width: 6, thin: true } },
    { kind: 'area', rings, open: true, pen },
  ];
}

function spanLabel({ from, to }: Span, frame: Frame, text: string, mmPerPx: number): Label {
  const [x1, y1] = pointOnSheet(frame, from);
  const [x2, y2] = pointOnSheet(frame, to);
  const lies = Math.abs(x2 - x1) >= Math.abs(y2 - y1);
  const away = AWAY * mmPerPx;
  const at: Point = lies ? [(x1 + x2) / 2, y1 + away + TICK * mmPerPx] : [x1 + away, (y1 + y2) / 2];
  return { at, text, anchor: lies ? 'middle' : 'start', plate: true, strong: true };
}

/** What one of two compared places measures, outside of it. */
function endLabel(
  { from, to }: Span,
  side: 'left' | 'right',
  frame: Frame,
  mmPerPx: number,
  system: LengthSystem,
): Label {
  const [x, low] = pointOnSheet(frame, from);
  const [, high] = pointOnSheet(frame, to);
  const away = AWAY * mmPerPx;
  return {
    at: [side === 'left' ? x - away : x + away, (low + high) / 2],
    text: formatLength(Math.abs(to[1] - from[1]), system),
    anchor: side === 'left' ? 'end' : 'start',
    plate: true,
  };
}

/** Words over the upper edge of a place, inside the sheet, with a line to its middle. */
function noteAt(
  place: Box,
  sheet: Box,
  text: string,
  mmPerPx: number,
): { readonly shapes: readonly Shape[]; readonly label: Label } {
  const x = place.x + place.width / 2;
  const top = place.y + place.height;
  const high = Math.min(sheet.y + sheet.height - AWAY * mmPerPx, top + 2 * AWAY * mmPerPx);
  const foot: Point = [x, Math.min(top, high)];
  return {
    shapes: [...haloed([[foot, [x, high]]])],
    label: { at: [x, high], text, anchor: 'middle', plate: true, strong: true },
  };
}
