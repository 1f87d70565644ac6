import type { Point, Ring } from '../geometry/polygon';
import { scatterOf, shareOf } from './drawn-chance';
import { pathText, type SvgNode } from './svg-nodes';

type Rings = readonly Ring[];

/** A size of tile: textures repeat with it in both directions, without a seam. */
export type Tile = readonly [width: number, height: number];
export const FLECK: Tile = [283, 171];
export const DRAG: Tile = [311, 157];
export const ROCK: Tile = [273, 181];
export const GRAIN: Tile = [97, 83];
export const CONCRETE_TILE: Tile = [341, 211];

export function flecks(): readonly SvgNode[] {
  return [
    tilePath(specks('dark', 70, FLECK, 0.6, 1.9), '#23110c', 0.26),
    tilePath(specks('pale', 46, FLECK, 0.5, 1.6), '#ffe9d2', 0.24),
    tilePath(specks('iron', 9, FLECK, 1.2, 2.2), '#190d0a', 0.4),
  ];
}

/** A dragged face: short marks across the unit. */
export function drags(): readonly SvgNode[] {
  return [
    tilePath(marks('drag-dark', 190), '#1f0f0a', 0.3),
    tilePath(marks('drag-pale', 140), '#ffe4c8', 0.25),
    tilePath(specks('drag-pit', 36, DRAG, 1, 2.6), '#1a0c08', 0.34),
  ];
}

/** A split face: broad facets, lit from the upper left. */
export function facets(): readonly SvgNode[] {
  return [
    tilePath(specks('facet-pale', 38, ROCK, 7, 19), '#ffe9d0', 0.16),
    tilePath(specks('facet-dark', 42, ROCK, 6, 18), '#1d0e0a', 0.2),
    tilePath(specks('facet-edge', 54, ROCK, 1.6, 5), '#190b08', 0.32),
    tilePath(specks('facet-glint', 44, ROCK, 1.2, 3.6), '#fff2e0', 0.32),
  ];
}

/** Sand in the mortar. */
export function grains(): readonly SvgNode[] {
  return [
    tilePath(specks('grain-dark', 50, GRAIN, 0.4, 1), '#33291f', 0.26),
    tilePath(specks('grain-pale', 34, GRAIN, 0.4, 1), '#fffaf0', 0.4),
  ];
}

/** Stones and sand in concrete. */
export function stones(): readonly SvgNode[] {
  return [
    tilePath(specks('stone', 62, CONCRETE_TILE, 2.2, 6), '#6f6a62', 0.6),
    tilePath(specks('sand', 260, CONCRETE_TILE, 0.5, 1.1), '#4b463f', 0.5),
  ];
}

function marks(name: string, count: number): Rings {
  const rings = Array.from({ length: count }, (_, index): Ring => {
    const x = shareOf(name, index * 5) * DRAG[0];
    const y = -shareOf(name, index * 5 + 1) * DRAG[1];
    const length = 5 + shareOf(name, index * 5 + 2) * 15;
    const lean = scatterOf(name, index * 5 + 3, 2.4);
    const wide = 0.7 + shareOf(name, index * 5 + 4) * 1.1;
    return [
      [x, y],
      [x + wide, y - 1],
      [x + lean + wide * 0.6, y - length],
      [x + lean - 0.3, y - length * 0.8],
    ];
  });
  return wrapped(rings, DRAG);
}

/** Small four-cornered specks, strewn evenly but not in rows. */
function specks(name: string, count: number, tile: Tile, least: number, most: number): Rings {
  const rings = Array.from({ length: count }, (_, index): Ring => {
    const x = shareOf(name, index * 7) * tile[0];
    const y = -shareOf(name, index * 7 + 1) * tile[1];
    const size = least + shareOf(name, index * 7 + 2) * (most - least);
    return [
      [x - size, y + scatterOf(name, index * 7 + 3, size * 0.5)],
      [x + scatterOf(name, index * 7 + 4, size * 0.5), y + size * 0.7],
      [x + size, y - size * 0.2],
      [x + scatterOf(name, index * 7 + 5, size * 0.6), y - size * 0.6],
    ];
  });
  return wrapped(rings, tile);
}

/** What runs over one edge of the tile comes in again at the other. */
function wrapped(rings: Rings, [width, height]: Tile): Rings {
  return rings.flatMap((ring) => {
    const right = ring.some(([x]) => x > width) ? [-width] : ring.some(([x]) => x < 0) ? [width] : [];
    const down = ring.some(([, y]) => y < -height) ? [height] : ring.some(([, y]) => y > 0) ? [-height] : [];
    return [0, ...right].flatMap((dx) =>
      [0, ...down].map((dy) => ring.map(([x, y]): Point => [x + dx, y + dy])),
    );
  });
}

function tilePath(rings: Rings, fill: string, fillOpacity: number): SvgNode {
  return { tag: 'path', attributes: { d: pathText(rings), fill, fillOpacity } };
}
