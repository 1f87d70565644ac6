import { type Box, boxRound } from '../geometry/box';
import { type Point, type Ring, rectRing } from '../geometry/polygon';
import type { Mm } from '../units';
import { shareOf } from './drawn-chance';
import { ring } from './rings';
import { type Area, lines, type Paint, type Shape } from './shape';

/** A modular brick as it is laid in a stretcher course, and its joints, mm. */
export const BRICK = { length: 194, height: 57, depth: 92 } as const;
export const JOINT: Mm = 10;
/** From one bed to the next. */
export const GAUGE: Mm = BRICK.height + JOINT;

/** Courses in running bond from `from`; every second course starts with a half. The last unit of a course is cut off at `to`. */
export function runningBond(from: Mm, to: Mm, courses: number, low: Mm = 0): readonly Box[] {
  const half = (BRICK.length - JOINT) / 2;
  return Array.from({ length: courses }, (_, course) => {
    const first = course % 2 === 0 ? from : from + half + JOINT;
    const count = Math.ceil((to - first) / (BRICK.length + JOINT));
    const y = low + course * GAUGE;
    const whole = Array.from({ length: count }, (_each, index): Box => {
      const x = first + index * (BRICK.length + JOINT);
      return { x, y, width: Math.min(BRICK.length, to - x), height: BRICK.height };
    });
    return course % 2 === 0 ? whole : [{ x: from, y, width: half, height: BRICK.height }, ...whole];
  }).flat();
}

/** Where a point of the face lies on the sheet: for a wall that is seen at a slant. */
export type Slant = (x: Mm, y: Mm) => Point;
const STRAIGHT: Slant = (x, y) => [x, y];

/** Units of brick from in front in their mortar, which lies under each and to its right as far as the masonry goes. */
export function brickwork(units: readonly Box[], slant: Slant = STRAIGHT): readonly Shape[] {
  const { x, width } = boxRound(units);
  const end = x + width;
  const turned = (ring: Ring): Ring => ring.map(([px, py]) => slant(px, py));
  const bedded = units.map((unit) =>
    rectRing(unit.x, unit.y - JOINT, Math.min(unit.width + JOINT, end - unit.x), unit.height + JOINT),
  );
  const shade = units.map((unit) =>
    rectRing(unit.x, unit.y - 2.6, Math.min(unit.width + 1.3, end - unit.x), unit.height),
  );
  return [
    { kind: 'area', rings: bedded.map(turned), fill: 'url:mortar' },
    { kind: 'area', rings: shade.map(turned), fill: '#1a1310', opacity: 0.36 },
    ...brickFaces(units, slant),
  ];
}

/** The faces alone. */
export function brickFaces(units: readonly Box[], slant: Slant = STRAIGHT): readonly Shape[] {
  const faces = units.map(
    ({ x, y, width, height }): Ring => rectRing(x, y, width, height).map(([px, py]) => slant(px, py)),
  );
  return [
    ...faces.map((ring, index): Area => ({ kind: 'area', rings: [ring], fill: fillAt(units[index]) })),
    { kind: 'area', rings: faces, fill: 'url:fleck' },
    ...arrises(faces),
  ];
}

/** Upper edges catch the light, lower ones lie in shade. A face goes from its lower left corner against the clock. */
export function arrises(faces: readonly Ring[]): readonly Area[] {
  const edge = (from: number, to: number, up: Mm) =>
    faces.map((face): Ring => {
      const [start = [0, 0], end = [0, 0]] = [face[from], face[to]];
      return ring(start[0] + 2, start[1] + up, end[0] - 2, end[1] + up);
    });
  return [
    lines(edge(3, 2, -0.6), { paint: '#fff0dc', width: 1.1, opacity: 0.3 }),
    lines(edge(0, 1, 0.7), { paint: '#1c0d08', width: 1.6, opacity: 0.34 }),
  ];
}

/** Neighbours differ in shade, as bricks of one firing do. */
function fillAt(unit: Pick<Box, 'x' | 'y'> = { x: 0, y: 0 }): Paint {
  const name = `${Math.round(unit.x)} ${Math.round(unit.y)}`;
  return `url:unit${Math.floor(shareOf(name, 1) * 8)}${shareOf(name, 2) < 0.6 ? 'a' : 'b'}`;
}
