import { ring } from '../../drawing/rings';
import { type Drawing, onSheet, type Pen, type Shape } from '../../drawing/shape';
import type { Box, FaceBox } from '../../geometry/box';
import { type Point, type Ring, rectRing } from '../../geometry/polygon';

/** A box on the face of a panel, and what it says: a mark of the reader, or what became of a fault. */
export interface MarkBox extends FaceBox {
  readonly number: number;
  /** The part it is on: a view that does not show the face may show that. */
  readonly part?: string;
  readonly state: 'mark' | 'found' | 'missed' | 'false';
}

/** A box this small on the screen would hide in its own ring, px. */
const LEAST = 18;
const ROOM = 4;
/** A badge, half as wide as it is with its rim, px. */
const BADGE = 13;

/** Where a badge at a corner of a mark stands: at the corner, or as near to it as the whole badge stays on the sheet. */
export function badgePlace(sheet: Box, [x, y]: Point, mmPerPx: number): Point {
  const half = BADGE * mmPerPx;
  return [
    Math.min(sheet.x + sheet.width - half, Math.max(sheet.x + half, x)),
    Math.min(sheet.y + sheet.height - half, Math.max(sheet.y + half, y)),
  ];
}

/** A mark less high or wide than this would lie half under its badges, px. */
const SMALL = 90;

/** Where the badge at the upper left or right of a mark stands: on the corner of a large mark, outside the corner of a small one. */
export function badgeAt(sheet: Box, mark: Box, side: 'left' | 'right', mmPerPx: number): Point {
  const out = Math.min(mark.width, mark.height) < SMALL * mmPerPx ? BADGE * mmPerPx : 0;
  const x = side === 'left' ? mark.x - out : mark.x + mark.width + out;
  return badgePlace(sheet, [x, mark.y + mark.height + out], mmPerPx);
}

/** Where a mark lies on the sheet, with room round it; null where the view shows neither that face nor that part. */
export function markOnSheet(drawing: Drawing, mark: MarkBox, mmPerPx: number): Box | null {
  const place = placeOn(drawing, mark);
  if (place === null) return null;
  const room = ROOM * mmPerPx;
  const width = Math.max(LEAST * mmPerPx, place.width + 2 * room);
  const height = Math.max(LEAST * mmPerPx, place.height + 2 * room);
  const middleX = place.x + place.width / 2;
  const middleY = place.y + place.height / 2;
  return { x: middleX - width / 2, y: middleY - height / 2, width, height };
}

function placeOn({ frames, spots }: Drawing, mark: MarkBox): Box | null {
  const frame = frames.find(({ panel }) => panel === mark.panel);
  if (frame === undefined) return spots.find(({ part }) => part === mark.part) ?? null;
  return onSheet(frame, mark);
}

/**
 * Rings and signs: a mark is a solid ring, found a solid ring with a tick, missed a dashed ring with an open circle, false a
 * cross-hatched box with a cross. Shape alone tells them apart.
 */
export function markShapes(drawing: Drawing, marks: readonly MarkBox[], mmPerPx: number): readonly Shape[] {
  return marks.flatMap((mark) => {
    const box = markOnSheet(drawing, mark, mmPerPx);
    return box === null ? [] : ringAndSign(drawing.box, mark.state, box, mmPerPx);
  });
}

const PAINTS = { mark: '--chalk', found: '--moss', missed: '--ink', false: '--clay' } as const;

function ringAndSign(sheet: Box, state: MarkBox['state'], box: Box, mmPerPx: number): readonly Shape[] {
  const paint = PAINTS[state];
  const ring = [rectRing(box.x, box.y, box.width, box.height)];
  const pen = (width: number, dash?: readonly number[]): Pen => ({
    paint,
    width,
    thin: true,
    ...(dash ? { dash } : {}),
  });
  const halo: Shape = { kind: 'area', rings: ring, pen: { paint: '--raised', width: 6, thin: true } };
  const line: Shape = { kind: 'area', rings: ring, pen: pen(3, state === 'missed' ? [7, 5] : undefined) };
  if (state === 'mark') return [halo, line];
  const hatch: readonly Shape[] =
    state === 'false' ? [{ kind: 'area', rings: crossHatch(box, 9 * mmPerPx), open: true, pen: pen(1) }] : [];
  return [halo, ...hatch, line, ...sign(sheet, state, box, mmPerPx, paint)];
}

function sign(
  sheet: Box,
  state: 'found' | 'missed' | 'false',
  box: Box,
  mmPerPx: number,
  paint: string,
): readonly Shape[] {
  const at = badgeAt(sheet, box, 'right', mmPerPx);
  const radius = 10 * mmPerPx;
  const to = (x: number, y: number): Point => [at[0] + x * mmPerPx, at[1] + y * mmPerPx];
  const plate: Shape = { kind: 'dot', at, radius, fill: '--raised', pen: { paint, width: 2.5, thin: true } };
  if (state === 'missed') return [plate];
  const strokes =
    state === 'found'
      ? [[to(-5, 0), to(-1, -4), to(5, 5)]]
      : [
          [to(-4, -4), to(4, 4)],
          [to(-4, 4), to(4, -4)],
        ];
  return [plate, { kind: 'area', rings: strokes, open: true, pen: { paint, width: 2.8, thin: true } }];
}

function crossHatch({ x, y, width, height }: Box, step: number): readonly Ring[] {
  const rings: Ring[] = [];
  for (let along = step; along < width + height; along += step) {
    const low = Math.max(0, along - height);
    const high = Math.min(along, width);
    rings.push(ring(x + low, y + along - low, x + high, y + along - high));
    rings.push(ring(x + low, y + height - (along - low), x + high, y + height - (along - high)));
  }
  return rings;
}
