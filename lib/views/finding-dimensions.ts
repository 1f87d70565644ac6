import { formatLength, type LengthSystem, type Mm } from '../units';
import type { Wall } from '../wall/model';
import { partsOf } from '../wall/parts';
import { surveyOf } from '../wall/survey';
import type { Box, Drawing, Frame, Label, Pen, Point, Shape } from './shape';

/** What was measured at one place, to be drawn there as a dimension. Lengths in mm on the face of the panel. */
export interface FindingDimension {
  readonly number: number;
  /** Name of the check: it says what was measured. */
  readonly check: string;
  /** Ids of the parts concerned, the most telling first. */
  readonly parts: readonly string[];
  readonly region: Box & { readonly panel: string };
  readonly measured: number;
  /** 'mm', '%', 'mm per m' … */
  readonly unit: string;
}

/** Two points on the face between which something is measured. */
interface Span {
  readonly from: Point;
  readonly to: Point;
  /** A line to measure from: level or plumb. */
  readonly base?: readonly [Point, Point];
}

/** Half the length of a tick, and from a line to its words, px. */
const TICK = 6;
const AWAY = 16;

/**
 * Dimension lines where the measuring was done, with number and measure; where a measure has no two ends on the face (how far a unit
 * stands out, a share), words with a line to the place. Nothing where the view does not show that face.
 */
export function findingDimensions(
  wall: Wall,
  drawing: Drawing,
  dimensions: readonly FindingDimension[],
  mmPerPx: number,
  system: LengthSystem,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  for (const each of dimensions) {
    const frame = drawing.frames.find(({ panel }) => panel === each.region.panel);
    if (frame === undefined) continue;
    const text = `${each.number}: ${measureText(each, system)}`;
    const spans = spansOf(wall, each);
    const [first] = spans;
    for (const span of spans) shapes.push(...spanShapes(span, frame, mmPerPx));
    if (first === undefined) {
      const note = noteAt(each.region, frame, drawing.box, text, mmPerPx);
      shapes.push(...note.shapes);
      labels.push(note.label);
    } else {
      labels.push(spanLabel(first, frame, text, mmPerPx));
    }
  }
  return { shapes, labels };
}

/** "16.2 mm" or "5/8 in"; "73 %", "4.9 mm per m". */
export function measureText({ measured, unit }: FindingDimension, system: LengthSystem): string {
  if (unit === 'mm') return formatLength(measured, system);
  const tenths = Math.round(measured * 10) / 10;
  return unit === '' ? `${tenths}` : `${tenths} ${unit}`;
}

/** Where a check measures on the face, if there are two ends to point at. */
function spansOf(wall: Wall, dimension: FindingDimension): readonly Span[] {
  const { check, parts: ids, region, measured, unit } = dimension;
  const parts = partsOf(wall);
  const part = parts.get(ids[0] ?? '');
  switch (check) {
    case 'tapering-bed':
      return bedEnds(wall, ids[0] ?? '');
    case 'thick-joint':
    case 'thin-joint':
      if (part === undefined) return [];
      return [
        part.kind === 'head'
          ? across(part, part.y + part.height / 2)
          : upright(part, part.x + part.width / 2),
      ];
    case 'sliver-piece':
      return part === undefined ? [] : [across(part, part.y + part.height / 2)];
    case 'course-off-level':
      return courseDrop(wall, ids[0] ?? '');
    case 'perpend-drift': {
      const middles = ids.flatMap((id): readonly Point[] => {
        const head = parts.get(id);
        return head?.kind === 'head' ? [[head.x + head.width / 2, head.y + head.height]] : [];
      });
      return gathered(middles, measured);
    }
    case 'short-lintel-bearing':
      return bearing(wall, ids[0] ?? '', ids[1] ?? '');
    default: {
      if (unit !== 'mm') return [];
      if (Math.abs(region.height - measured) < 1) return [upright(region, region.x + region.width / 2)];
      return Math.abs(region.width - measured) < 1 ? [across(region, region.y + region.height / 2)] : [];
    }
  }
}

function across({ x, width }: Box, y: Mm): Span {
  return { from: [x, y], to: [x + width, y] };
}

function upright({ y, height }: Box, x: Mm): Span {
  return { from: [x, y], to: [x, y + height] };
}

/** Both ends of a bed, the thicker first. */
function bedEnds(wall: Wall, bed: string): readonly Span[] {
  for (const { placed } of surveyOf(wall).panels) {
    const each = placed.find(({ unit }) => `${unit.id}-bed` === bed);
    if (each?.bed == null) continue;
    const { unit } = each;
    const right = unit.x + unit.length;
    const low = unit.y - unit.fall;
    const ends: readonly Span[] = [
      { from: [unit.x, unit.y - each.bed.left], to: [unit.x, unit.y] },
      { from: [right, low - each.bed.right], to: [right, low] },
    ];
    return each.bed.left >= each.bed.right ? ends : [...ends].reverse();
  }
  return [];
}

/** From the level through one end of a course to its other end. */
function courseDrop(wall: Wall, course: string): readonly Span[] {
  const units = wall.units.filter(({ panel, course: row }) => `${panel}${row}` === course);
  const first = units[0];
  const last = units[units.length - 1];
  if (first === undefined || last === undefined) return [];
  const x = last.x + last.length;
  const level: Point = [x, first.y];
  return [{ from: level, to: [x, last.y - last.fall], base: [[first.x, first.y], level] }];
}

/** Of one chain of head joints, from the furthest left to the furthest right, with a plumb line through the first. */
function gathered(middles: readonly Point[], measured: number): readonly Span[] {
  for (const left of middles) {
    const right = middles.find(([x]) => Math.abs(x - left[0] - measured) < 0.1);
    if (right === undefined) continue;
    const plumb: Point = [left[0], right[1]];
    return [{ from: plumb, to: right, base: [left, plumb] }];
  }
  return [];
}

/** From the end of a lintel to the jamb, on the side where less lies on the wall. */
function bearing(wall: Wall, lintel: string, opening: string): readonly Span[] {
  const steel = wall.supports.find(({ id }) => id === lintel);
  const gap = wall.openings.find(({ id }) => id === opening);
  if (steel === undefined || gap === undefined) return [];
  const end = gap.x + gap.width;
  return gap.x - steel.fromX <= steel.toX - end
    ? [{ from: [steel.fromX, steel.y], to: [gap.x, steel.y] }]
    : [{ from: [end, steel.y], to: [steel.toX, steel.y] }];
}

function onSheet({ x, y, scale }: Frame, [px, py]: Point): Point {
  return [x + scale * px, y + scale * py];
}

function spanShapes(span: Span, frame: Frame, mmPerPx: number): readonly Shape[] {
  const from = onSheet(frame, span.from);
  const to = onSheet(frame, span.to);
  const lies = Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
  const reach = TICK * mmPerPx;
  const tick = ([x, y]: Point): readonly Point[] =>
    lies
      ? [
          [x, y - reach],
          [x, y + reach],
        ]
      : [
          [x - reach, y],
          [x + reach, y],
        ];
  const base = (span.base ?? []).map((point) => onSheet(frame, point));
  return [...(base.length > 0 ? haloed([base], [8, 4]) : []), ...haloed([[from, to], tick(from), tick(to)])];
}

/** Lines seen on light and dark alike. */
function haloed(rings: readonly (readonly Point[])[], dash?: readonly number[]): readonly Shape[] {
  const pen: Pen = { paint: '--ink', width: 2, thin: true, ...(dash ? { dash } : {}) };
  return [
    { kind: 'area', rings, open: true, pen: { paint: '--raised', width: 6, thin: true } },
    { kind: 'area', rings, open: true, pen },
  ];
}

function spanLabel({ from, to }: Span, frame: Frame, text: string, mmPerPx: number): Label {
  const [x1, y1] = onSheet(frame, from);
  const [x2, y2] = onSheet(frame, to);
  const lies = Math.abs(x2 - x1) >= Math.abs(y2 - y1);
  const away = AWAY * mmPerPx;
  const at: Point = lies ? [(x1 + x2) / 2, y1 + away + TICK * mmPerPx] : [x1 + away, (y1 + y2) / 2];
  return { at, text, anchor: lies ? 'middle' : 'start', plate: true, strong: true };
}

/** Words over the upper edge of a place, inside the sheet, with a line to its middle. */
function noteAt(
  region: Box,
  frame: Frame,
  sheet: Box,
  text: string,
  mmPerPx: number,
): { readonly shapes: readonly Shape[]; readonly label: Label } {
  const [x, y] = onSheet(frame, [region.x + region.width / 2, region.y + region.height / 2]);
  const top = y + (region.height * frame.scale) / 2;
  const high = Math.min(sheet.y + sheet.height - AWAY * mmPerPx, top + 2 * AWAY * mmPerPx);
  const foot: Point = [x, Math.min(top, high)];
  return {
    shapes: [...haloed([[foot, [x, high]]])],
    label: { at: [x, high], text, anchor: 'middle', plate: true, strong: true },
  };
}
