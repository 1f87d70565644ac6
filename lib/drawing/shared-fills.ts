import { CONCRETE, darker, EARTH, lighter, STEEL, WOOD } from './colours';
import type { Drawing } from './shape';
import type { SvgNode } from './svg-nodes';
import {
  CONCRETE_TILE,
  DRAG,
  drags,
  FLECK,
  facets,
  flecks,
  GRAIN,
  grains,
  ROCK,
  stones,
  type Tile,
} from './texture-tiles';

/** What the masonry of a drawing is made of: the shades of its units and of its quoins, and its mortar. */
export interface FillColours {
  readonly units: readonly string[];
  readonly quoins: readonly string[];
  readonly mortar: string;
}

/** Fills that many parts of a drawing share, as SVG patterns and gradients, as far as it uses them. `url:name` in a shape means `name` here. */
export function sharedFills(
  { shapes }: Pick<Drawing, 'shapes'>,
  colours: FillColours,
  prefix: string,
): readonly SvgNode[] {
  const used = new Set(shapes.map(({ fill }) => `${prefix}${fill?.replace('url:', '')}`));
  return allFills(colours, prefix).filter(({ attributes }) => used.has(String(attributes.id)));
}

function allFills({ units, quoins, mortar }: FillColours, prefix: string): readonly SvgNode[] {
  const id = (name: string) => `${prefix}${name}`;
  return [
    ...units.flatMap((colour, shade) => unitGradients(colour, id(`unit${shade}`))),
    ...quoins.flatMap((colour, shade) => unitGradients(colour, id(`quoin${shade}`))),
    pattern(id('fleck'), FLECK, flecks()),
    pattern(id('drag'), DRAG, drags()),
    pattern(id('drag-on-end'), DRAG, drags(), 'rotate(90)'),
    pattern(id('rock'), ROCK, facets()),
    pattern(id('grain'), GRAIN, grains()),
    pattern(id('mortar'), GRAIN, [ground(mortar, GRAIN), ...grains()]),
    ...veils(id('bloom')),
    gradient(
      id('stain'),
      [0, 0, 0, 1],
      [
        ['#5f2a10', 0.75, 0],
        ['#6b3013', 0.04, 1],
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
    gradient(
      id('other-side-shade'),
      [1, 0, 0, 0],
      [
        ['#120d0a', 0.5, 0],
        ['#120d0a', 0, 1],
      ],
    ),
    ...hatches(id),
  ];
}

/** Bloom, heavier to one side or the other. */
function veils(id: string): readonly SvgNode[] {
  const stops = [
    ['#fbf8f0', 0.56, 0],
    ['#fbf8f0', 0.3, 0.4],
    ['#fbf8f0', 0.02, 1],
  ] as const;
  return [gradient(`${id}a`, [0.1, 1, 0.3, 0], stops), gradient(`${id}b`, [0.9, 1, 0.6, 0], stops)];
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

function pattern(
  id: string,
  [width, height]: Tile,
  children: readonly SvgNode[],
  patternTransform?: string,
): SvgNode {
  const attributes = { id, width, height, patternUnits: 'userSpaceOnUse' };
  return {
    tag: 'pattern',
    attributes: patternTransform ? { ...attributes, patternTransform } : attributes,
    children,
  };
}

/** Section and surface hatching as on a working drawing. */
function hatches(id: (name: string) => string): readonly SvgNode[] {
  const strokes = (d: string, stroke: string, strokeWidth: number): SvgNode => ({
    tag: 'path',
    attributes: { d, stroke, strokeWidth, fill: 'none' },
  });
  return [
    pattern(
      id('cut-brick'),
      [14, 14],
      [ground('#d99a82', [14, 14]), strokes('M-2 16L16-2M-2 2L2-2M12 16L16 12', '#7c3626', 1.3)],
    ),
    pattern(
      id('cut-stone'),
      [22, 14],
      [ground('#d8ceb8', [22, 14]), strokes('M-2 16L16-2M6 16L24-2M-2 2L2-2M20 16L24 12', '#6d6350', 1.1)],
    ),
    pattern(id('concrete'), CONCRETE_TILE, [ground(CONCRETE, CONCRETE_TILE), ...stones()]),
    pattern(
      id('cut-steel'),
      [5, 5],
      [ground(STEEL, [5, 5]), strokes('M-1 6L6-1M1.5 6L6 1.5', '#2c3338', 1.1)],
    ),
    pattern(
      id('wood'),
      [160, 46],
      [
        ground(WOOD, [160, 46]),
        strokes('M0 9q40-5 80 0t80 0M0 23q40 7 80 0t80 0M0 37q40-4 80 0t80 0', '#8a6233', 1),
      ],
    ),
    pattern(
      id('cut-wood'),
      [60, 60],
      [ground(WOOD, [60, 60]), strokes('M0 60L60 0M0 0L60 60', '#8a6233', 0.9)],
    ),
    pattern(
      id('earth'),
      [64, 48],
      [
        ground(EARTH, [64, 48]),
        strokes('M4 12l10-8M10 16l12-10M16 20l12-10M36 36l10-8M42 40l12-10M48 44l12-10', '#594a39', 1.4),
      ],
    ),
  ];
}

function ground(fill: string, [width, height]: Tile): SvgNode {
  return { tag: 'rect', attributes: { width, height, fill } };
}
