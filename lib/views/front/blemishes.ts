import { scatterOf, shareOf } from '../../drawing/drawn-chance';
import { ring } from '../../drawing/rings';
import type { Area, Paint } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';
import type { Condition, Unit } from '../../wall/model';
import { faceOf, onFace } from '../unit-outline';

/** A chip, mm across, from and to: no more than the 15 mm that a British warranty lets pass (NHBC Standards 2019 9.1.2). */
const CHIP: readonly [Mm, Mm] = [9, 14];
/** How far a crumbling arris has gone back, mm, from and to. */
const CRUMBLED: readonly [Mm, Mm] = [2, 13];
/** What is broken away lies this far in the shade of its upper left edge, mm: to the right and down. */
const SHADE: Point = [0.9, -1.7];
const DARK = '#2a130b';
const MORTAR = '#d3ccbd';

/**
 * What has gone from the faces of units, or come onto them: chips, flakes, crumbling edges, smears and stains. Looks only. `body`:
 * the colour of a fresh break.
 */
export function blemishes(units: readonly Unit[], body: Paint): readonly Area[] {
  const showing = (condition: Condition) => units.filter((unit) => unit.condition === condition);
  const chips = showing('chip').map(chipOf);
  const gone = [...showing('flake').map(flakeOf), ...showing('crumbling').map(crumblingOf)];
  return [
    // One area each: the fill fades from the top of the area to its foot.
    ...showing('stain').map((unit): Area => ({ kind: 'area', rings: runsOf(unit), fill: 'url:stain' })),
    ...plain(showing('smear').map(smearOf), MORTAR, 0.5),
    ...plain(showing('smear').map(smearOf).map(lowerHalf), MORTAR, 0.5),
    ...plain(chips, body, 1),
    ...edges(chips.map((ring) => ring.slice(1))),
    ...plain(gone, DARK, 0.75),
    ...plain(gone.map(outOfShade), body, 1),
    ...plain(gone.map(outOfShade), 'url:grain', 0.9),
    ...plain(showing('crumbling').flatMap(crumbsOf), DARK, 0.6),
  ];
}

function plain(rings: readonly Ring[], fill: Paint, opacity: number): readonly Area[] {
  return rings.length === 0 ? [] : [{ kind: 'area', rings, fill, opacity }];
}

/** The broken edge of a chip; its other two sides are the outline of the unit. */
function edges(rings: readonly Ring[]): readonly Area[] {
  if (rings.length === 0) return [];
  return [{ kind: 'area', rings, open: true, pen: { paint: DARK, width: 1.1, opacity: 0.7 } }];
}

/** A bite out of an upper corner: along the upper arris, and down the end. */
function chipOf(unit: Unit): Ring {
  const [, , right, left] = faceOf(unit);
  const { id, length, height, fall, cut } = unit;
  const across = Math.min(between(CHIP, shareOf(id, 201)), Math.min(length, height) / 3);
  const down = across * (0.6 + shareOf(id, 202) * 0.3);
  // A saw leaves its end whole.
  const atLeft = cut === undefined ? shareOf(id, 203) < 0.5 : cut.left === 0;
  const [x, y] = atLeft ? left : right;
  const inward = atLeft ? across : -across;
  return [
    [x, y],
    [x + inward, y - (fall / length) * inward],
    [x + inward * 0.66, y - down * 0.34],
    [x + inward * 0.4, y - down * 0.78],
    [x, y - down],
  ];
}

/** The face gone in a rough patch. */
function flakeOf(unit: Unit): Ring {
  const middle = 0.4 + shareOf(unit.id, 211) * 0.2;
  const broad = 0.14 + shareOf(unit.id, 228) * 0.16;
  const high = 0.24 + shareOf(unit.id, 229) * 0.13;
  return Array.from({ length: 16 }, (_, index): Point => {
    const turn = (index * Math.PI) / 8;
    const reach = 1 + scatterOf(unit.id, 212 + index, 0.26);
    return onFace(unit, middle + broad * reach * Math.cos(turn), 0.5 + high * reach * Math.sin(turn));
  });
}

/** The lower arris eaten away from one end to the other, unevenly. */
function crumblingOf(unit: Unit): Ring {
  const [left, right] = faceOf(unit);
  const steps = 18;
  const eaten = Array.from({ length: steps + 1 }, (_, index): Point => {
    const back = Math.min(unit.height / 4, between(CRUMBLED, shareOf(unit.id, 231 + index)));
    return onFace(unit, 1 - index / steps, back / unit.height);
  });
  return [left, right, ...eaten];
}

/** Grains loose at a crumbling edge. */
function crumbsOf(unit: Unit): readonly Ring[] {
  return Array.from({ length: 7 }, (_, index): Ring => {
    const [x, y] = onFace(
      unit,
      0.06 + 0.86 * shareOf(unit.id, 251 + index),
      0.22 + 0.12 * shareOf(unit.id, 261 + index),
    );
    return ring(x, y, x + 2, y + 0.6, x + 0.8, y + 1.8);
  });
}

/** Mortar wiped up over the face from the bed below, ragged where the trowel left it. */
function smearOf(unit: Unit): Ring {
  const from = 0.08 + shareOf(unit.id, 271) * 0.16;
  const to = from + 0.5 + shareOf(unit.id, 272) * 0.2;
  const steps = 11;
  const upper = Array.from({ length: steps + 1 }, (_, index): Point => {
    const high = 0.55 * Math.sin((Math.PI * index) / steps);
    // The trowel went to the right.
    const along = to - ((to - from) * index) / steps + high * 0.2;
    return onFace(unit, Math.min(1, along), high * (1 + scatterOf(unit.id, 273 + index, 0.3)));
  });
  return [onFace(unit, from, 0), onFace(unit, to, 0), ...upper];
}

/** Rust or dirt that water carried down: four runs of their own breadth and length from the upper arris. */
function runsOf(unit: Unit): readonly Ring[] {
  const from = 0.2 + shareOf(unit.id, 281) * 0.25;
  return [0, 1, 2, 3].map((run): Ring => {
    const half = 0.014 + shareOf(unit.id, 282 + run) * 0.022;
    const along = from + run * 0.075 + scatterOf(unit.id, 290 + run, 0.015);
    const tip = run === 1 ? 0 : 0.05 + shareOf(unit.id, 286 + run) * 0.4;
    return [
      onFace(unit, along - half * 1.9, 1),
      onFace(unit, along + half * 1.9, 1),
      onFace(unit, along + half, 0.9),
      onFace(unit, along + half * 0.8, (1 + tip) / 2),
      onFace(unit, along + half * 0.6, tip),
      onFace(unit, along - half * 0.6, tip),
      onFace(unit, along - half, (1 + tip) / 2),
      onFace(unit, along - half, 0.9),
    ];
  });
}

/** The ring moved out of the shade of its upper left edge, but not past its own lower right one. */
function outOfShade(ring: Ring): Ring {
  const right = Math.max(...ring.map(([x]) => x));
  const foot = Math.min(...ring.map(([, y]) => y));
  return ring.map(([x, y]): Point => [Math.min(right, x + SHADE[0]), Math.max(foot, y + SHADE[1])]);
}

/** The ring drawn in toward its foot: half as high. */
function lowerHalf(ring: Ring): Ring {
  const foot = Math.min(...ring.map(([, y]) => y));
  return ring.map(([x, y]): Point => [x, foot + (y - foot) * 0.5]);
}

function between([least, most]: readonly [Mm, Mm], share: number): Mm {
  return least + share * (most - least);
}
