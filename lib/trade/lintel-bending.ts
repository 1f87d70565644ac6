import type { Mm } from '../units';
import { GRAVITY } from './gravity';
import { refuseNegative, refuseNotPositive } from './refusals';

// Elementary beam formulas for one straight lintel on two simple supports. For teaching, and for checking that a table was typed right.
// Never for deciding. The triangle holds only where the masonry above can arch (enough wall above and beside, mortar hardened, no
// movement joint at the jamb, no load set down low); fresh mortar does not arch.

const CUBIC_MM_PER_CUBIC_M = 1e9;

/** What bends: N/mm² and mm⁴. */
export interface Stiffness {
  readonly elastic: number;
  readonly inertia: number;
}

/** What a load does to a lintel on two simple supports. Newtons and mm. */
export interface Bending {
  /** All of the load, N. */
  readonly load: number;
  /** Greatest moment, at mid-span, N·mm. */
  readonly moment: number;
  /** At each end, N. */
  readonly reaction: number;
  /** At mid-span, mm. */
  readonly deflection: Mm;
}

/** Weight of masonry in the 45-degree triangle over a span, N: q·L²/4, for a wall that weighs q N/mm² of face. @throws RangeError on senseless numbers. */
export function triangleWeight(wallWeight: number, span: Mm): number {
  refuseNegative('wall weight', wallWeight);
  refuseNotPositive('span', span);
  return (wallWeight * span ** 2) / 4;
}

/** A triangle of total weight W, peak at mid-span: M = WL/6, reaction W/2, deflection WL³/(60EI). @throws RangeError on senseless numbers. */
export function triangularBending(load: number, span: Mm, { elastic, inertia }: Stiffness): Bending {
  refuseNegative('load', load);
  refuseBeam(span, elastic, inertia);
  return {
    load,
    moment: (load * span) / 6,
    reaction: load / 2,
    deflection: (load * span ** 3) / (60 * elastic * inertia),
  };
}

/** A load spread evenly, w N/mm: M = wL²/8, reaction wL/2, deflection 5wL⁴/(384EI). @throws RangeError on senseless numbers. */
export function uniformBending(line: number, span: Mm, { elastic, inertia }: Stiffness): Bending {
  refuseNegative('line load', line);
  refuseBeam(span, elastic, inertia);
  return {
    load: line * span,
    moment: (line * span ** 2) / 8,
    reaction: (line * span) / 2,
    deflection: (5 * line * span ** 4) / (384 * elastic * inertia),
  };
}

/** Two loads on the same lintel at once: all four add. */
export function bothLoads(one: Bending, other: Bending): Bending {
  return {
    load: one.load + other.load,
    moment: one.moment + other.moment,
    reaction: one.reaction + other.reaction,
    deflection: one.deflection + other.deflection,
  };
}

/** What a bar weighs along its length, N/mm: section mm², density kg/m³. @throws RangeError on senseless numbers. */
export function selfWeight(area: number, density: number): number {
  refuseNotPositive('area', area);
  refuseNotPositive('density', density);
  return (area * density * GRAVITY) / CUBIC_MM_PER_CUBIC_M;
}

/** The n of "deflects span/n". @throws RangeError unless both are above zero. */
export function spanToDeflection(span: Mm, deflection: Mm): number {
  refuseNotPositive('span', span);
  refuseNotPositive('deflection', deflection);
  return span / deflection;
}

/** Mean pressure under one end, N/mm² (MPa): reaction ÷ (bearing × width). @throws RangeError on senseless numbers. */
export function bearingPressure(reaction: number, bearing: Mm, width: Mm): number {
  refuseNegative('reaction', reaction);
  refuseNotPositive('bearing', bearing);
  refuseNotPositive('width', width);
  return reaction / (bearing * width);
}

function refuseBeam(span: Mm, elastic: number, inertia: number): void {
  refuseNotPositive('span', span);
  refuseNotPositive('elastic modulus', elastic);
  refuseNotPositive('inertia', inertia);
}
