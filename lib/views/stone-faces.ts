import type { Mm } from '../units';
import type { Unit, Wall } from '../wall/model';
import { scatterOf, shareOf } from './drawn-chance';
import type { Area, Point } from './shape';
import { faceOf } from './unit-outline';

/** How wide the pitched edge of a stone is, mm, from and to: split stone, and stone that was dressed or sawn. */
const PITCHED: readonly [Mm, Mm] = [7, 15];
const DRESSED: readonly [Mm, Mm] = [3, 5];

/**
 * Fired brick or squared stone: looks only. Walls of thin units stuck on are of stone where their faces are split, and in half of the
 * colour lots; what stands on a ledge is of brick.
 */
export function finishOf({ masonry, tone, units }: Wall): 'brick' | 'squared stone' {
  if (masonry !== 'adhered') return 'brick';
  return tone.lot >= 2 || units[0]?.texture === 'rock-face' ? 'squared stone' : 'brick';
}

/** What a mason's pitching tool leaves: edges falling off from a middle that stands out, lit from the upper left, and ridges across it. */
export function stoneFaces(units: readonly Unit[]): readonly Area[] {
  const sides = units.map(sidesOf);
  const split = units.filter(({ texture }) => texture === 'rock-face');
  return [
    { kind: 'area', rings: units.map(faceOf), fill: 'url:grain', opacity: 0.9 },
    { kind: 'area', rings: sides.map(({ top }) => top), fill: '#fff8e8', opacity: 0.34 },
    { kind: 'area', rings: sides.map(({ left }) => left), fill: '#fff8e8', opacity: 0.2 },
    { kind: 'area', rings: sides.map(({ right }) => right), fill: '#1b1a17', opacity: 0.2 },
    { kind: 'area', rings: sides.map(({ bottom }) => bottom), fill: '#1b1a17', opacity: 0.34 },
    ...(split.length > 0 ? ridges(split) : []),
  ];
}

interface Sides {
  readonly top: readonly Point[];
  readonly left: readonly Point[];
  readonly right: readonly Point[];
  readonly bottom: readonly Point[];
}

function sidesOf(unit: Unit): Sides {
  const [a, b, c, d] = faceOf(unit);
  const [least, most] = unit.texture === 'rock-face' ? PITCHED : DRESSED;
  const inset = (salt: number): Mm => least + shareOf(unit.id, salt) * (most - least);
  const jog = (salt: number): Mm => scatterOf(unit.id, salt, least * 0.4);
  const inner: readonly [Point, Point, Point, Point] = [
    [a[0] + inset(101), a[1] + inset(102)],
    [b[0] - inset(103), b[1] + inset(104)],
    [c[0] - inset(105), c[1] - inset(106)],
    [d[0] + inset(107), d[1] - inset(108)],
  ];
  const [p, q, r, s] = inner;
  const between = (from: Point, to: Point, at: number, salt: number): Point => [
    from[0] + (to[0] - from[0]) * at + jog(salt),
    from[1] + (to[1] - from[1]) * at + jog(salt + 1),
  ];
  const third = 0.25 + shareOf(unit.id, 110) * 0.2;
  return {
    top: [d, c, r, between(r, s, third, 111), between(r, s, third + 0.3, 113), s],
    bottom: [a, b, q, between(q, p, third, 115), between(q, p, third + 0.3, 117), p],
    left: [a, p, s, d],
    right: [b, q, r, c],
  };
}

/** Two broken ridges over each split face: a lit line, and the shade under it. */
function ridges(units: readonly Unit[]): readonly Area[] {
  const rings = units.flatMap((unit) => [ridgeOf(unit, 120), ridgeOf(unit, 140)]);
  const under = rings.map((ring) => ring.map(([x, y]): Point => [x + 0.6, y - 1.8]));
  const pen = (paint: string, width: Mm, opacity: number) => ({ paint, width, opacity });
  return [
    { kind: 'area', rings: under, open: true, pen: pen('#1b1a17', 2.4, 0.26) },
    { kind: 'area', rings, open: true, pen: pen('#fffaf0', 1.3, 0.42) },
  ];
}

function ridgeOf({ id, x, y, length, height, fall }: Unit, salt: number): readonly Point[] {
  const from = 0.12 + shareOf(id, salt) * 0.3;
  const to = Math.min(0.9, from + 0.25 + shareOf(id, salt + 1) * 0.4);
  const level = 0.28 + shareOf(id, salt + 2) * 0.44;
  return [0, 1, 2, 3].map((step): Point => {
    const along = from + ((to - from) * step) / 3;
    const up = level + scatterOf(id, salt + 3 + step, 0.13);
    return [x + length * along, y - fall * along + height * up];
  });
}
