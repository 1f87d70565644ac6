import { scatterOf, shareOf } from '../../drawing/drawn-chance';
import { ring } from '../../drawing/rings';
import type { Area } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Unit, Wall } from '../../wall/model';
import { faceOf, onFace } from '../unit-outline';

/** How wide the pitched edge of a stone is, mm, from and to: split stone, and stone that was dressed or sawn. */
const PITCHED: readonly [Mm, Mm] = [7, 15];
const DRESSED: readonly [Mm, Mm] = [3, 5];
/** A margin is drafted so wide along the edges of a quoin before its middle is worked, mm (common practice: 20 to 25). */
const MARGIN: Mm = 20;

/** A quoin is of stone whatever the wall is built of. */
export function isStone({ finish }: Pick<Wall, 'finish'>, { kind }: Pick<Unit, 'kind'>): boolean {
  return kind === 'quoin' || finish === 'squared stone';
}

/** What a mason's pitching tool leaves: edges falling off from a middle that stands out, lit from the upper left, and ridges across it. */
export function stoneFaces(units: readonly Unit[]): readonly Area[] {
  if (units.length === 0) return [];
  const quoins = units.filter(({ kind }) => kind === 'quoin');
  const sides = units.map((unit) => sidesOf(unit.kind === 'quoin' ? withinMargin(unit) : unit));
  const split = units.filter(({ texture }) => texture === 'rock-face');
  return [
    { kind: 'area', rings: units.map(faceOf), fill: 'url:grain', opacity: 0.9 },
    ...(quoins.length > 0 ? margins(quoins) : []),
    { kind: 'area', rings: sides.map(({ top }) => top), fill: '#fff8e8', opacity: 0.34 },
    { kind: 'area', rings: sides.map(({ left }) => left), fill: '#fff8e8', opacity: 0.2 },
    { kind: 'area', rings: sides.map(({ right }) => right), fill: '#1b1a17', opacity: 0.2 },
    { kind: 'area', rings: sides.map(({ bottom }) => bottom), fill: '#1b1a17', opacity: 0.34 },
    ...(split.length > 0 ? ridges(split) : []),
  ];
}

/** The part of a quoin inside the margin that its mason drafted along the edges. */
function withinMargin(unit: Unit): Unit {
  return {
    ...unit,
    x: unit.x + MARGIN,
    y: unit.y + MARGIN - (unit.fall * MARGIN) / unit.length,
    length: unit.length - 2 * MARGIN,
    height: unit.height - 2 * MARGIN,
    fall: unit.fall * (1 - (2 * MARGIN) / unit.length),
  };
}

/** The strokes of the chisel square across the margin, and the middle a little darker than it: tooled by hand. */
function margins(quoins: readonly Unit[]): readonly Area[] {
  return [
    {
      kind: 'area',
      rings: quoins.map((unit) => faceOf(withinMargin(unit))),
      fill: '#4a3f2c',
      opacity: 0.1,
    },
    {
      kind: 'area',
      rings: quoins.flatMap(strokesOf),
      open: true,
      pen: { paint: '#3a3325', width: 0.8, opacity: 0.3 },
    },
  ];
}

/** So far apart does the chisel stand from stroke to stroke, mm. */
const STROKE: Mm = 8;

function strokesOf(unit: Unit): readonly Ring[] {
  const { id, x, y, length, height, fall } = unit;
  const across = Math.floor((length - 4) / STROKE);
  const up = Math.floor((height - 2 * MARGIN) / STROKE);
  const off = (salt: number): Mm => scatterOf(id, salt, 1.1);
  return [
    ...Array.from({ length: across }, (_, index) => {
      const at = 2 + (index + 0.5) * STROKE + off(300 + index);
      const foot = y - (fall * at) / length;
      return [foot, foot + height - MARGIN].map(
        (low): Ring => ring(x + at, low + 1.6, x + at + 1.2, low + MARGIN - 1.4),
      );
    }),
    ...Array.from({ length: up }, (_, index) => {
      const at = MARGIN + (index + 0.5) * STROKE + off(400 + index);
      return [0, length - MARGIN].map(
        (from): Ring => [
          [x + from + 1.6, y + at - (fall * from) / length],
          [x + from + MARGIN - 1.4, y + at - (fall * from) / length + 1],
        ],
      );
    }),
  ].flat();
}

interface Sides {
  readonly top: Ring;
  readonly left: Ring;
  readonly right: Ring;
  readonly bottom: Ring;
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

function ridgeOf(unit: Unit, salt: number): Ring {
  const { id } = unit;
  const from = 0.12 + shareOf(id, salt) * 0.3;
  const to = Math.min(0.9, from + 0.25 + shareOf(id, salt + 1) * 0.4);
  const level = 0.28 + shareOf(id, salt + 2) * 0.44;
  return [0, 1, 2, 3].map((step): Point => {
    const along = from + ((to - from) * step) / 3;
    const up = level + scatterOf(id, salt + 3 + step, 0.13);
    return onFace(unit, along, up);
  });
}
