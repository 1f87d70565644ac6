import { scatterOf, shareOf } from '../drawing/drawn-chance';
import type { Point, Ring } from '../geometry/polygon';
import type { Mm } from '../units';
import type { Unit } from '../wall/model';

/** An arris wanders no more than this from the measured edge, mm: less than a joint gauge tells. */
const WANDER: Mm = 0.35;
const WANDER_SPLIT: Mm = 1.1;
/** A corner is knocked off by this much, from and to. */
const KNOCK: readonly [Mm, Mm] = [0.8, 2.6];

/** The face of a unit as drawn: its four measured corners, a little knocked about. Irregular in looks only. */
export function outlineOf(unit: Unit): Ring {
  const { id, x, y, length, height, fall, texture } = unit;
  const wander = texture === 'rock-face' ? WANDER_SPLIT : WANDER;
  const under = (at: number): Mm => y - fall * at;
  const knock = (corner: number): Mm => KNOCK[0] + shareOf(id, corner) * (KNOCK[1] - KNOCK[0]);
  const off = (salt: number): Mm => scatterOf(id, salt, wander);
  const [a, b, c, d] = [knock(1), knock(2), knock(3), knock(4)];
  const third = 0.3 + shareOf(id, 5) * 0.4;
  const top = 0.3 + shareOf(id, 6) * 0.4;
  if (unit.cut !== undefined) return cutOutline(unit, off);
  return [
    [x, y + a],
    [x + a, y],
    [x + length * third, under(third) + off(7)],
    [x + length - b, under(1)],
    [x + length, under(1) + b],
    [x + length + off(8), under(1) + height * 0.5],
    [x + length, under(1) + height - c],
    [x + length - c, under(1) + height],
    [x + length * top, under(top) + height + off(9)],
    [x + d, y + height],
    [x, y + height - d],
    [x + off(10), y + height * 0.5],
  ];
}

/** A saw leaves sharp corners: of a cut unit the edges wander a little, and its corners stand where they are measured. */
function cutOutline(unit: Unit, off: (salt: number) => Mm): Ring {
  const corners = faceOf(unit);
  return corners.flatMap((from, index): readonly Point[] => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const isSawn = index % 2 === 1;
    const aside = isSawn ? 0 : off(7 + index);
    return [from, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + aside]];
  });
}

/** The measured face: four corners, from the lower left, against the clock. */
export function faceOf(unit: Unit): readonly [Point, Point, Point, Point] {
  return [onFace(unit, 0, 0), onFace(unit, 1, 0), onFace(unit, 1, 1), onFace(unit, 0, 1)];
}

/** A place on the face; `along` and `up` from 0 (left, bottom) to 1. At a height, `along` runs from one end to the other, sloping ones too. */
export function onFace({ x, y, length, height, fall, cut }: Unit, along: number, up: number): Point {
  if (cut === undefined) return [x + length * along, y - fall * along + height * up];
  const at = cut.left * up + (length - (cut.left + cut.right) * up) * along;
  return [x + at, y - (fall * at) / length + height * up];
}

/** How far the face stands out at a place on it; `along` and `up` from 0 (left, bottom) to 1. */
export function faceDepth(unit: Unit, along: number, up: number): Mm {
  return unit.set + unit.twist * (along - 0.5) + unit.lean * (up - 0.5);
}
