import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { Mm } from '../units';
import type { Camera } from './camera';
import type { Joint, Joints } from './joint';
import { type Edges, type Laid, type Strip, stripsOf } from './laid';
import { QUANTITIES, type QuantityName, valuesOf } from './quantities';
import type { Mapping } from './reference';
import { lineThrough, meanOf } from './rows';

/** Walls drawn to see what the scatter of the fits does to a quantity, and above all to a greatest, a least and a spread. */
const DRAWS = 200;
const SEED = 20;
/** The standard deviation of a joint that a hand put where it is, mm. */
const HAND: Mm = 1;

/** What the scatter of the fits does to a quantity: how much it is biased by it, and its standard deviation. */
export interface Scatter {
  readonly bias: number;
  readonly sd: number;
}

/** Standard deviations of the numbers of a wall as it was seen, each from how much neighbouring strips of a joint differ. */
interface Noise {
  readonly beds: readonly { readonly y: number; readonly fall: number; readonly width: number }[];
  readonly heads: readonly (readonly { readonly x: number; readonly width: number }[])[];
}

/** For each quantity, what comes of the fits alone: walls like the one that was seen, with as much noise put on again. */
export function scatterOf(
  laid: Laid,
  joints: Joints,
  mapping: Mapping,
  camera: Camera,
  edges: Edges,
): Readonly<Partial<Record<QuantityName, Scatter>>> {
  const noise = noiseOf(joints, mapping, camera, edges);
  // Each draw and its mirror image: a plain mean is left as it is to the last digit.
  const drawn = [1, -1].flatMap((sign) => {
    const normal = normalsFrom(SEED);
    const either = () => sign * normal();
    return Array.from({ length: DRAWS / 2 }, () => valuesOf(shaken(laid, noise, either)));
  });
  const seen = valuesOf(laid);
  return Object.fromEntries(
    QUANTITIES.flatMap((name) => {
      const values = drawn.flatMap((each) => each[name]?.value ?? []);
      const here = seen[name];
      if (here === undefined || values.length < DRAWS / 2) return [];
      const middle = meanOf(values);
      const square = values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / values.length;
      return [[name, { bias: middle - here.value, sd: Math.sqrt(square) }] as const];
    }),
  );
}

function shaken({ beds, courses }: Laid, noise: Noise, normal: () => number): Laid {
  return {
    beds: beds.map(({ y, fall, width }, index) => ({
      y: y + (noise.beds[index]?.y ?? 0) * normal(),
      fall: fall + (noise.beds[index]?.fall ?? 0) * normal(),
      width: width + (noise.beds[index]?.width ?? 0) * normal(),
    })),
    courses: courses.map((course, row) =>
      course.map(({ x, width }, index) => ({
        x: x + (noise.heads[row]?.[index]?.x ?? 0) * normal(),
        width: width + (noise.heads[row]?.[index]?.width ?? 0) * normal(),
      })),
    ),
  };
}

function noiseOf(joints: Joints, mapping: Mapping, camera: Camera, edges: Edges): Noise {
  const strips = (joint: Joint, axis: 'x' | 'y') => stripsOf(joint, mapping, camera, edges, axis);
  const beds = joints.beds.map((joint) => strips(joint, 'y'));
  const heads = joints.heads.map((course) => course.map((joint) => strips(joint, 'x')));
  const sd = (of: readonly (readonly Strip[])[], what: 'across' | 'width') =>
    pooled(of.map((each) => each.map((strip) => strip[what])));
  const [bedMiddle, bedWidth] = [sd(beds, 'across'), sd(beds, 'width')];
  const [headMiddle, headWidth] = [sd(heads.flat(), 'across'), sd(heads.flat(), 'width')];
  return {
    beds: beds.map((bed, index) => {
      const line = lineThrough(bed.map(({ along, across }) => ({ x: along, y: across })));
      const long = Math.sqrt(bed.reduce((sum, { along }) => sum + (along - line.x) ** 2, 0));
      const away = mapping.width / 2 - line.x;
      const fitted = bedMiddle * Math.sqrt(1 / bed.length + (away / long) ** 2);
      return {
        y: Math.hypot(fitted, handOf(joints.beds[index])),
        fall: bedMiddle / long,
        width: bedWidth / Math.sqrt(bed.length),
      };
    }),
    heads: heads.map((course, row) =>
      course.map((head, index) => ({
        x: Math.hypot(headMiddle / Math.sqrt(head.length), handOf(joints.heads[row]?.[index])),
        width: headWidth / Math.sqrt(head.length),
      })),
    ),
  };
}

function handOf(joint: Joint | undefined): Mm {
  return joint?.byHand ? HAND : 0;
}

/** The standard deviation of one strip, from the differences of neighbours in all joints: what changes slowly along a joint is no noise. */
function pooled(joints: readonly (readonly number[])[]): number {
  let [square, count] = [0, 0];
  for (const values of joints) {
    for (let at = 1; at < values.length; at++) {
      square += ((values[at] ?? 0) - (values[at - 1] ?? 0)) ** 2 / 2;
      count += 1;
    }
  }
  return count > 0 ? Math.sqrt(square / count) : 0;
}

/** Numbers of the normal distribution, the same run for the same seed (Box and Muller). */
function normalsFrom(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  const even = () => ((generator.next() >>> 0) + 0.5) / 2 ** 32;
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}
