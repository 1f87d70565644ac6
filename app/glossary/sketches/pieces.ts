import { BRICK, brickwork, GAUGE, JOINT, runningBond } from '../../../lib/drawing/brickwork';
import { cut, cutColumn, cutFrame, cutStrap, STUD_DEEP } from '../../../lib/drawing/cut';
import { ring } from '../../../lib/drawing/rings';
import { lines, type Paint, type Pen, polygon, rect, type Shape } from '../../../lib/drawing/shape';
import { type Box, clipped } from '../../../lib/geometry/box';
import { type Point, type Ring, rectRing } from '../../../lib/geometry/polygon';
import type { Mm } from '../../../lib/units';

export const LINE: Pen = { paint: '#22272b', width: 1.4, thin: true };
export const STEEL = '#8c979f';
export const TIMBER = '#b98a54';

/** A thing with its outline. */
export function solid(ring: Ring, fill: Paint, pen: Pen = LINE): Shape {
  return { kind: 'area', rings: [ring], fill, pen };
}

export function bar(x: Mm, y: Mm, width: Mm, height: Mm, fill: Paint): Shape {
  return solid(rectRing(x, y, width, height), fill);
}

/** Under the first course of a wall from in front, mm above the foot of the sheet. */
export const FOOT: Mm = 30;

/** Units of running bond that run off the sheet on both sides. */
export function bond(courses: number, to: Mm = 1100): readonly Box[] {
  return runningBond(-150, to, courses, FOOT);
}

export function wall(courses: number): readonly Shape[] {
  return [
    rect({ x: -150, y: 0, width: 1250, height: FOOT - JOINT }, 'url:concrete'),
    ...brickwork(bond(courses)),
  ];
}

/** The unit of a bond that a point lies in. */
export function unitAt(units: readonly Box[], x: Mm, course: number): Box {
  const found = units.find(
    (unit) => x >= unit.x && x <= unit.x + unit.width && Math.abs(unit.y - FOOT - course * GAUGE) < 1,
  );
  if (found === undefined) throw new RangeError(`no unit at ${x} in course ${course}`);
  return found;
}

/** Units cut off where a hole begins; what is left of one is at least a small piece. */
export function around(units: readonly Box[], hole: Box): readonly Box[] {
  return units.flatMap((unit) => {
    const { width, height } = clipped(unit, hole);
    if (width <= 0 || height <= 0) return [unit];
    const left = hole.x - unit.x;
    const right = unit.x + unit.width - hole.x - hole.width;
    return [
      ...(left > JOINT ? [{ ...unit, width: left }] : []),
      ...(right > JOINT ? [{ ...unit, x: hole.x + hole.width, width: right }] : []),
    ];
  });
}

/** A window in its opening: the dark of the reveal, a frame, glass. */
export function windowIn({ x, y, width, height }: Box): readonly Shape[] {
  return [
    bar(x, y, width, height, '#3b4147'),
    bar(x + 8, y + 8, width - 16, height - 8, '#ece7da'),
    bar(x + 50, y + 50, width - 100, height - 50, 'url:glass'),
  ];
}

/** Where the face of the veneer stands in a section of a house wall, where its ledge lies, and where the air space ends. */
export const VENEER = { face: 560, ledge: 40, frame: 428 } as const;

/** A house wall cut through: foundation with its ledge, frame, air space, brick and the ties between. */
export function houseWall(courses = 6, ties: readonly number[] = [2, 4]): readonly Shape[] {
  const { face, ledge, frame } = VENEER;
  const sill = ledge + GAUGE;
  const back = frame - 12 - STUD_DEEP;
  const foundation: Ring = [
    ...ring(back - 10, -40, face + 45, -40, face + 45, ledge),
    ...ring(frame, ledge, frame, sill, back - 10, sill),
  ];
  return [
    rect({ x: frame, y: ledge, width: face - BRICK.depth - frame, height: 500 }, '--air'),
    cut(foundation, 'url:concrete'),
    ...cutFrame(frame, sill, 500),
    ...cutColumn(face, ledge, courses),
    ...ties.flatMap((course) => cutStrap(frame, face - 38, ledge + course * GAUGE + JOINT / 2, 1.6)),
  ];
}

/** A brick lying on its bed, from in front and above to the right: its front, its top and its end. */
export function block(
  x: Mm,
  y: Mm,
  { length, height, depth } = { ...BRICK } as { length: Mm; height: Mm; depth: Mm },
) {
  const top = (along: Mm, back: Mm): Point => [x + along + back * 0.6, y + height + back * 0.5];
  const front = rectRing(x, y, length, height);
  const above: Ring = [top(0, 0), top(length, 0), top(length, depth), top(0, depth)];
  const foot = ring(x + length, y, x + length + depth * 0.6, y + depth * 0.5);
  const end: Ring = [...foot, top(length, depth), top(length, 0)];
  const shapes = [
    ...[front, above, end].map((ring) => solid(ring, 'url:unit0a')),
    polygon(above, '#fff0dc', 0.22),
    polygon(end, '#170c08', 0.32),
    ...[front, above, end].map((ring) => polygon(ring, 'url:fleck')),
  ];
  return { shapes, top };
}

/** Units of a course seen from above, the face of each at its own height on the sheet. */
export function fromAbove(faces: readonly Mm[]): readonly Box[] {
  return faces.map((y, index) => ({ x: 40 + index * 204, y, width: BRICK.length, height: BRICK.depth }));
}

/** A handle of wood along a line. */
export function handle(from: Point, to: Point, thick: Mm): readonly Shape[] {
  return [
    lines([[from, to]], { paint: '#4d2f18', width: thick }),
    lines([[from, to]], { paint: '#8a5730', width: thick * 0.78 }),
  ];
}
