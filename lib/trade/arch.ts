import { MM_PER_M, type Mm } from '../units';
import { GRAVITY } from './gravity';
import { refuseNotPositive } from './refusals';

/** A segmental arch: part of a circle. Lengths in mm; `ring` is its depth along a radius, `unit` the thickness of a unit along the curve. */
export interface ArchShape {
  readonly span: Mm;
  readonly rise: Mm;
  readonly ring: Mm;
  readonly unit: Mm;
}

/** An arch as it is laid out on the ground: the circle of its underside, half the angle it spans, its units and their joints. */
export interface ArchSetOut {
  readonly radius: Mm;
  /** Radians, from the middle to one skewback. */
  readonly half: number;
  /** Odd, so that one is the key. */
  readonly count: number;
  /** At the underside, where a wedge-shaped joint is thinnest, and at the back. */
  readonly inside: Mm;
  readonly outside: Mm;
}

/** Radius of the circle through both springings and the crown: (s²/4 + r²) ÷ 2r. @throws RangeError for numbers that are not positive. */
export function archRadius(span: Mm, rise: Mm): Mm {
  refuseNotPositive('span', span);
  refuseNotPositive('rise', rise);
  return (span ** 2 / 4 + rise ** 2) / (2 * rise);
}

/**
 * Sets out whole units with equal wedge-shaped joints, one at each skewback too: the odd number whose thin joint comes nearest to the one
 * wished for. @throws RangeError for numbers that are not positive, a rise over half the span, or a span that holds no unit.
 */
export function setOutArch({ span, rise, ring, unit }: ArchShape, joint: Mm): ArchSetOut {
  for (const [name, value] of Object.entries({ ring, unit, joint })) refuseNotPositive(name, value);
  const radius = archRadius(span, rise);
  if (rise > span / 2) throw new RangeError(`rise: ${rise} mm is more than half of the span`);
  const half = Math.asin(Math.min(1, span / 2 / radius));
  const along = 2 * half * radius;
  const jointFor = (count: number) => (along - count * unit) / (count + 1);
  const most = Math.floor(along / unit);
  if (most < 1) throw new RangeError(`unit: ${unit} mm is longer than the arch`);
  const odd = Array.from({ length: Math.ceil(most / 2) }, (_, index) => 2 * index + 1);
  const count = odd.reduce((best, each) =>
    Math.abs(jointFor(each) - joint) < Math.abs(jointFor(best) - joint) ? each : best,
  );
  const back = 2 * half * (radius + ring);
  return { radius, half, count, inside: jointFor(count), outside: (back - count * unit) / (count + 1) };
}

/** What a kilogram of brickwork takes up: kg/m³, as the worked example has it. */
const DENSITY = 1900;

/**
 * How hard an arch pushes outward at each side, N: its own ring and a triangle of brickwork over it, at 45°. H = M ÷ r, with M of a beam of
 * the same span: wL²/8 + WL/6. `thick` is the wall from front to back. Mortar hardened, nothing else carried. @throws RangeError.
 */
export function archThrust({ span, rise, ring }: ArchShape, thick: Mm): number {
  for (const [name, value] of Object.entries({ span, rise, ring, thick })) refuseNotPositive(name, value);
  const [long, high, deep, wide] = [span, rise, ring, thick].map((mm) => mm / MM_PER_M) as [
    number,
    number,
    number,
    number,
  ];
  const weight = DENSITY * GRAVITY * wide;
  const own = weight * deep;
  const triangle = (weight * long ** 2) / 4;
  return ((own * long ** 2) / 8 + (triangle * long) / 6) / high;
}
