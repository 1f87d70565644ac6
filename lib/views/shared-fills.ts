import type { Wall } from '../wall/model';
import { CONCRETE, darker, EARTH, lighter, STEEL, unitColours, WOOD } from './colours';
import { scatterOf, shareOf } from './drawn-chance';
import type { Point } from './shape';
import { type PaintOf, pathText, type SvgNode } from './svg-nodes';

/** Fills that many parts of a drawing share, as SVG patterns and gradients. `url:name` in a shape means `name` here. */
export function sharedFills(wall: Wall, paintOf: PaintOf, prefix: string): readonly SvgNode[] {
  const id = (name: string) => `${prefix}${name}`;
  return [
    ...unitColours(wall).flatMap((colour, shade) => unitGradients(colour, id(`unit${shade}`))),
    pattern(id('fleck'), 283, 171, flecks()),
    pattern(id('drag'), 211, 157, drags()),
    pattern(id('rock'), 173, 121, facets()),
    pattern(id('grain'), 97, 83, grains()),
    gradient(
      id('bloom'),
      [0, 1, 0, 0],
      [
        ['#fbf8f0', 0.62, 0],
        ['#fbf8f0', 0.3, 0.55],
        ['#fbf8f0', 0.04, 1],
      ],
    ),
    gradient(
      id('glass'),
      [0, 0, 0.9, 1],
      [
        ['#9db6c4', 1, 0],
        ['#7f9dad', 1, 0.45],
        ['#93aebb', 1, 0.46],
        ['#5f7c8c', 1, 1],
      ],
    ),
    gradient(
      id('head-shade'),
      [0, 0, 0, 1],
      [
        ['#120d0a', 0.62, 0],
        ['#120d0a', 0, 1],
      ],
    ),
    gradient(
      id('side-shade'),
      [0, 0, 1, 0],
      [
        ['#120d0a', 0.5, 0],
        ['#120d0a', 0, 1],
      ],
    ),
    ...hatches(id, paintOf),
  ];
}

/** Two ways a unit came out of the kiln: lighter to one end, or flashed dark at the other. */
function unitGradients(colour: string, id: string): readonly SvgNode[] {
  return [
    gradient(
      `${id}a`,
      [0, 0, 1, 0.5],
      [
        [lighter(colour, 0.045), 1, 0],
        [colour, 1, 0.5],
        [darker(colour, 0.07), 1, 1],
      ],
    ),
    gradient(
      `${id}b`,
      [0, 0, 1, 0.3],
      [
        [darker(colour, 0.11), 1, 0],
        [lighter(colour, 0.03), 1, 0.45],
        [colour, 1, 1],
      ],
    ),
  ];
}

function gradient(
  id: string,
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  stops: readonly (readonly [colour: string, opacity: number, at: number])[],
): SvgNode {
  return {
    tag: 'linearGradient',
    attributes: { id, x1, y1, x2, y2 },
    children: stops.map(([stopColor, stopOpacity, offset]) => ({
      tag: 'stop',
      attributes: { offset, stopColor, ...(stopOpacity === 1 ? {} : { stopOpacity }) },
    })),
  };
}

function pattern(id: string, width: number, height: number, children: readonly SvgNode[]): SvgNode {
  return { tag: 'pattern', attributes: { id, width, height, patternUnits: 'userSpaceOnUse' }, children };
}

function path(rings: readonly (readonly Point[])[], fill: string, fillOpacity: number): SvgNode {
  return { tag: 'path', attributes: { d: pathText(rings), fill, fillOpacity } };
}

/** Small three-cornered specks, strewn evenly but not in rows. */
function specks(
  name: string,
  count: number,
  width: number,
  height: number,
  least: number,
  most: number,
): Point[][] {
  return Array.from({ length: count }, (_, index) => {
    const x = most + shareOf(name, index * 7) * (width - 2 * most);
    const y = -most - shareOf(name, index * 7 + 1) * (height - 2 * most);
    const size = least + shareOf(name, index * 7 + 2) * (most - least);
    return [
      [x - size, y + scatterOf(name, index * 7 + 3, size * 0.5)],
      [x + scatterOf(name, index * 7 + 4, size * 0.5), y + size * 0.7],
      [x + size, y - size * 0.2],
      [x + scatterOf(name, index * 7 + 5, size * 0.6), y - size * 0.6],
    ];
  });
}

function flecks(): readonly SvgNode[] {
  return [
    path(specks('dark', 70, 283, 171, 0.6, 1.9), '#23110c', 0.26),
    path(specks('pale', 46, 283, 171, 0.5, 1.6), '#ffe9d2', 0.24),
    path(specks('iron', 9, 283, 171, 1.4, 3), '#190d0a', 0.42),
  ];
}

/** A dragged face: short marks across the unit. */
function drags(): readonly SvgNode[] {
  const marks = (name: string, count: number): Point[][] =>
    Array.from({ length: count }, (_, index) => {
      const x = 4 + shareOf(name, index * 5) * 200;
      const y = -4 - shareOf(name, index * 5 + 1) * 130;
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
  return [
    path(marks('drag-dark', 120), '#1f0f0a', 0.34),
    path(marks('drag-pale', 85), '#ffe4c8', 0.28),
    path(specks('drag-pit', 26, 211, 157, 1, 3), '#1a0c08', 0.36),
  ];
}

/** A split face: broad facets, lit from the upper left. */
function facets(): readonly SvgNode[] {
  return [
    path(specks('facet-pale', 15, 173, 121, 7, 17), '#ffe9d0', 0.17),
    path(specks('facet-dark', 17, 173, 121, 6, 16), '#1d0e0a', 0.22),
    path(specks('facet-edge', 22, 173, 121, 1.6, 5), '#190b08', 0.34),
    path(specks('facet-glint', 18, 173, 121, 1.2, 3.6), '#fff2e0', 0.34),
  ];
}

/** Sand in the mortar. */
function grains(): readonly SvgNode[] {
  return [
    path(specks('grain-dark', 50, 97, 83, 0.4, 1), '#33291f', 0.26),
    path(specks('grain-pale', 34, 97, 83, 0.4, 1), '#fffaf0', 0.4),
  ];
}

/** Section and surface hatching as on a working drawing. */
function hatches(id: (name: string) => string, paintOf: PaintOf): readonly SvgNode[] {
  const ground = (fill: string, width: number, height: number): SvgNode => ({
    tag: 'rect',
    attributes: { width, height, fill },
  });
  const strokes = (d: string, stroke: string, strokeWidth: number): SvgNode => ({
    tag: 'path',
    attributes: { d, stroke, strokeWidth, fill: 'none' },
  });
  return [
    pattern(id('cut-brick'), 14, 14, [
      ground('#d99a82', 14, 14),
      strokes('M-2 16L16-2M-2 2L2-2M12 16L16 12', '#7c3626', 1.3),
    ]),
    pattern(id('concrete'), 120, 90, [
      ground(CONCRETE, 120, 90),
      path(specks('stone', 13, 120, 90, 2.4, 5.6), '#6f6a62', 0.6),
      path(specks('sand', 46, 120, 90, 0.5, 1.1), '#4b463f', 0.55),
    ]),
    pattern(id('cut-steel'), 5, 5, [ground(STEEL, 5, 5), strokes('M-1 6L6-1M1.5 6L6 1.5', '#2c3338', 1.1)]),
    pattern(id('wood'), 160, 46, [
      ground(WOOD, 160, 46),
      strokes('M0 9q40-5 80 0t80 0M0 23q40 7 80 0t80 0M0 37q40-4 80 0t80 0', '#8a6233', 1),
    ]),
    pattern(id('cut-wood'), 60, 60, [ground(WOOD, 60, 60), strokes('M0 60L60 0M0 0L60 60', '#8a6233', 0.9)]),
    pattern(id('earth'), 64, 48, [
      ground(EARTH, 64, 48),
      strokes('M4 12l10-8M10 16l12-10M16 20l12-10M36 36l10-8M42 40l12-10M48 44l12-10', '#594a39', 1.4),
    ]),
    pattern(id('wrap'), 150, 150, [
      ground(paintOf('--air'), 150, 150),
      strokes('M0 75h150', paintOf('--line'), 1),
    ]),
  ];
}
