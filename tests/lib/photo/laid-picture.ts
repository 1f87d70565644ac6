import type { Corners } from '../../../lib/photo/homography';
import type { Laid } from '../../../lib/photo/laid';
import type { Spot } from '../../../lib/photo/matrix';
import type { Picture } from '../../../lib/photo/picture';
import type { Reference } from '../../../lib/photo/reference';
import { type Chance, chanceOf } from './chance';

/**
 * A wall that was laid at random, seen by a camera that stood at random, with a lens, blur, noise, light from one side, a hand that
 * points, a tape that is read, and mortar set back: each error drawn from the spread that the program says it counts with. Nothing
 * here uses the program's own mathematics.
 */
export interface Case {
  readonly picture: Picture;
  readonly reference: Reference;
  /** From the rectangle's top left corner, as the program tells it. */
  readonly truth: Laid;
  readonly unit: { readonly length: number; readonly height: number };
}

interface Camera {
  readonly at: readonly [x: number, y: number, z: number];
  /** Rows: the picture's right, its down, its depth. */
  readonly turn: Turn;
  readonly focal: number;
  readonly lens: number;
  readonly width: number;
  readonly height: number;
}

export const LEVEL_SD = 0.5;
const MARGIN = 400;

export function laidCase(seed: number, width: number, height: number): Case {
  const chance = chanceOf(seed);
  const unit = { length: chance.even(185, 235), height: chance.even(55, 75) };
  const joint = chance.even(7.5, 13);
  const courses = Math.round(chance.even(4.6, 9.4));
  const across = chance.even(0.9, 1.6) * courses * (unit.height + joint);
  const wall = layWall(chance, unit, joint, courses, across);
  const [top, bottom] = [wall.beds[1]?.y ?? 0, wall.beds[courses + 1]?.y ?? 0];
  const [left, right] = clearOfHeads(chance, wall, across, joint);
  const box = { left, top: top - 0.45 * unit.height, right, bottom: bottom + 0.45 * unit.height };
  const camera = stand(chance, box, width, height);
  const seen = { wider: chance.normal(0.5), recess: chance.normal(3) };
  const picture = take(chance, wall, camera, seen);
  const proud = chance.normal(3);
  const tilt = chance.normal(LEVEL_SD) / 1000;
  const [midX, midY] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
  const corners = [
    [box.left, box.top],
    [box.right, box.top],
    [box.right, box.bottom],
    [box.left, box.bottom],
  ].map(([x = 0, y = 0]) => {
    const spot = project(camera, [x - tilt * (y - midY), y + tilt * (x - midX), -proud]);
    return { x: spot.x + chance.normal(1.5), y: spot.y + chance.normal(1.5) };
  });
  const reference: Reference = {
    kind: 'rectangle',
    corners: corners as unknown as Corners,
    width: box.right - box.left + chance.normal(1),
    height: box.bottom - box.top + chance.normal(1),
  };
  return { picture, reference, truth: inside(wall, box), unit };
}

/** Beds and heads of a wall a good deal larger than the rectangle; y down, the middle of the rectangle's width as the place where a bed's y is told. */
function layWall(
  chance: Chance,
  unit: { length: number; height: number },
  joint: number,
  courses: number,
  across: number,
): Laid {
  const uneven = chance.even(0.2, 1.5);
  const fall = chance.normal(1.5) / 1000;
  const beds = [{ y: 0, fall, width: joint }];
  for (let course = 0; course < courses + 3; course++) {
    const last = beds[course] ?? { y: 0, fall, width: joint };
    beds.push({
      y: last.y + unit.height + joint + chance.normal(uneven),
      fall: fall + chance.normal(0.4) / 1000,
      width: Math.max(4, joint + chance.normal(uneven)),
    });
  }
  const pitch = unit.length + joint;
  const lapped = chance.pick([0.5, 0.5, 1 / 3, 0.25]);
  const start = -MARGIN - chance.even(0, pitch);
  return {
    beds,
    courses: beds.slice(1).map((_, index) => {
      const heads: { x: number; width: number }[] = [];
      let x = start + (index % 2) * lapped * pitch + chance.normal(1);
      while (x < across + MARGIN) {
        heads.push({ x: x + chance.normal(uneven), width: Math.max(4, joint + chance.normal(uneven)) });
        x += chance.happens(0.1) ? pitch / 2 : pitch;
      }
      return heads;
    }),
  };
}

/** Left and right of a rectangle about so wide that cuts no head joint in two: as a person would choose it. */
function clearOfHeads(
  chance: Chance,
  wall: Laid,
  across: number,
  joint: number,
): readonly [left: number, right: number] {
  const edge = (near: number) => {
    const away = (x: number) => Math.min(...wall.courses.flat().map((head) => Math.abs(head.x - x)));
    const tries = Array.from({ length: 60 }, () => near + chance.even(-100, 100));
    return (
      tries.find((x) => away(x) > 2.2 * joint) ?? tries.reduce((best, x) => (away(x) > away(best) ? x : best))
    );
  };
  return [edge(0), edge(across)];
}

function inside(wall: Laid, box: { left: number; top: number; right: number; bottom: number }): Laid {
  const shown = wall.beds.map(({ y }) => y > box.top && y < box.bottom);
  const first = shown.indexOf(true);
  const last = shown.lastIndexOf(true);
  const middle = (box.left + box.right) / 2;
  return {
    beds: wall.beds.slice(first, last + 1).map((bed) => ({ ...bed, y: bed.y + bed.fall * middle - box.top })),
    courses: wall.courses
      .slice(first, last)
      .map((heads) =>
        heads
          .filter(({ x, width }) => x - width / 2 > box.left && x + width / 2 < box.right)
          .map(({ x, width }) => ({ x: x - box.left, width })),
      ),
  };
}

function stand(
  chance: Chance,
  box: { left: number; top: number; right: number; bottom: number },
  width: number,
  height: number,
): Camera {
  const diagonal = Math.hypot(width, height);
  const focal = chance.even(0.55, 0.75) * diagonal;
  const [yaw, pitch, roll] = [chance.normal(6), chance.normal(5), chance.normal(2)].map(
    (degrees) => (Math.max(-15, Math.min(15, degrees)) * Math.PI) / 180,
  ) as [number, number, number];
  const fill = chance.even(0.72, 0.85);
  const far = Math.max(
    ((box.right - box.left) * focal) / (fill * width),
    ((box.bottom - box.top) * focal) / (fill * height),
  );
  const turn = product(product(aboutZ(roll), aboutX(pitch)), aboutY(yaw));
  const depth = turn[2];
  const middle = [(box.left + box.right) / 2, (box.top + box.bottom) / 2] as const;
  return {
    at: [middle[0] - depth[0] * far, middle[1] - depth[1] * far, -depth[2] * far],
    turn,
    focal,
    lens: chance.normal(0.01),
    width,
    height,
  };
}

function take(
  chance: Chance,
  wall: Laid,
  camera: Camera,
  { wider, recess }: { wider: number; recess: number },
): Picture {
  const { width, height, at } = camera;
  const isLight = chance.happens(0.7);
  const tones = {
    unit: isLight ? chance.even(70, 110) : chance.even(140, 180),
    mortar: isLight ? chance.even(150, 200) : chance.even(60, 90),
    spread: chance.even(4, 10),
    grain: chance.even(3, 8),
    salt: Math.floor(chance.even(0, 1e6)),
  };
  const shade = [chance.normal(0.06), chance.normal(0.06)] as const;
  const rough = new Float32Array(width * height);
  const toneAt = (u: number, v: number) => {
    const [x, y] = onWall(camera, u, v);
    const here = unitAt(wall, x, y, wider);
    const [awayX, awayY] = [(recess * (x - at[0])) / -at[2], (recess * (y - at[1])) / -at[2]];
    const behind = unitAt(wall, x + awayX, y + awayY, wider);
    const isMortar = recess > 0 ? here < 0 && behind < 0 : here < 0 || behind < 0;
    const unit = Math.max(here, behind);
    const grain = tones.grain * (noise(Math.floor(x / 2), Math.floor(y / 2), tones.salt) * 2 - 1);
    if (isMortar) return tones.mortar + grain;
    return tones.unit + grain + tones.spread * 1.7 * (noise(unit, 0, tones.salt) * 2 - 1);
  };
  for (let v = 0; v < height; v++) {
    for (let u = 0; u < width; u++) {
      const [low, high] = [0.25, 0.75];
      const sum =
        toneAt(u + low, v + low) +
        toneAt(u + high, v + low) +
        toneAt(u + low, v + high) +
        toneAt(u + high, v + high);
      const light = 1 + shade[0] * (u / width - 0.5) * 2 + shade[1] * (v / height - 0.5) * 2;
      rough[v * width + u] = (sum / 4) * light;
    }
  }
  const soft = blurred(rough, width, chance.even(0.5, 1.1));
  const grit = chance.even(2, 6);
  const data = new Uint8Array(width * height * 4);
  for (let index = 0; index < soft.length; index++) {
    const tone = Math.round(Math.max(0, Math.min(255, (soft[index] ?? 0) + chance.normal(grit))));
    data.set([tone, tone, tone, 255], index * 4);
  }
  return { width, height, data };
}

/** Which unit a point of the wall lies in, as a whole number that tells units apart; −1 in mortar. */
function unitAt(wall: Laid, x: number, y: number, wider: number): number {
  let [low, high] = [0, wall.beds.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    const bed = wall.beds[middle];
    if (bed !== undefined && bed.y + bed.fall * x <= y) low = middle;
    else high = middle;
  }
  if (liesIn(wall.beds[low], x, y, wider) || liesIn(wall.beds[high], x, y, wider)) return -1;
  const heads = wall.courses[low] ?? [];
  let place = 0;
  for (let head = heads[0]; head !== undefined; head = heads[++place]) {
    if (head.x + head.width / 2 < x) continue;
    return Math.abs(x - head.x) < (head.width - wider) / 2 ? -1 : low * 1000 + place;
  }
  return low * 1000 + place;
}

function liesIn(bed: Laid['beds'][number] | undefined, x: number, y: number, wider: number): boolean {
  return bed !== undefined && Math.abs(y - bed.y - bed.fall * x) < (bed.width - wider) / 2;
}

/** Where on the wall's face (z = 0) the ray of a pixel ends. */
function onWall(
  { at, turn, focal, lens, width, height }: Camera,
  u: number,
  v: number,
): readonly [number, number] {
  const radius = ((u - width / 2) ** 2 + (v - height / 2) ** 2) / ((width * width + height * height) / 4);
  const by = 1 / (1 + lens * radius) / focal;
  const [a, b] = [(u - width / 2) * by, (v - height / 2) * by];
  const [right, down, depth] = turn;
  const far = -at[2] / (a * right[2] + b * down[2] + depth[2]);
  return [
    at[0] + far * (a * right[0] + b * down[0] + depth[0]),
    at[1] + far * (a * right[1] + b * down[1] + depth[1]),
  ];
}

function project(
  { at, turn, focal, lens, width, height }: Camera,
  point: readonly [number, number, number],
): Spot {
  const [a = 0, b = 0, c = 1] = turn.map((row) =>
    row.reduce((sum, value, axis) => sum + value * ((point[axis] ?? 0) - (at[axis] ?? 0)), 0),
  );
  const [x, y] = [(focal * a) / c, (focal * b) / c];
  const radius = (x * x + y * y) / ((width * width + height * height) / 4);
  const by = 2 / (1 + Math.sqrt(1 - 4 * lens * radius));
  return { x: width / 2 + x * by, y: height / 2 + y * by };
}

function blurred(tones: Float32Array, width: number, sd: number): Float32Array {
  const reach = Math.ceil(3 * sd);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, at) =>
    Math.exp(-((at - reach) ** 2) / (2 * sd * sd)),
  );
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const pass = (from: Float32Array, step: number) => {
    const to = new Float32Array(from.length);
    for (let index = 0; index < from.length; index++) {
      let sum = 0;
      for (let at = -reach; at <= reach; at++) {
        const near = index + at * step;
        sum += (from[near] ?? from[index] ?? 0) * (weights[at + reach] ?? 0);
      }
      to[index] = sum / total;
    }
    return to;
  };
  return pass(pass(tones, 1), width);
}

/** Even between 0 and 1, the same for the same three numbers. */
function noise(a: number, b: number, salt: number): number {
  let hash = Math.imul(a, 0x9e3779b1) ^ Math.imul(b + 7919, 0x85ebca6b) ^ Math.imul(salt, 0xc2b2ae35);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return ((hash ^ (hash >>> 15)) >>> 0) / 2 ** 32;
}

type Row = readonly [number, number, number];
type Turn = readonly [Row, Row, Row];

function product(a: Turn, b: Turn): Turn {
  return a.map(
    (row) =>
      [0, 1, 2].map((column) =>
        row.reduce((sum, value, at) => sum + value * (b[at]?.[column] ?? 0), 0),
      ) as unknown as Row,
  ) as unknown as Turn;
}

function aboutX(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [1, 0, 0],
    [0, c, -s],
    [0, s, c],
  ];
}

function aboutY(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [c, 0, s],
    [0, 1, 0],
    [-s, 0, c],
  ];
}

function aboutZ(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [
    [c, -s, 0],
    [s, c, 0],
    [0, 0, 1],
  ];
}
