import type { Box } from '../geometry/box';
import type { Ring } from '../geometry/polygon';
import type { Area, Paint, Shape } from './shape';

/** An SVG element as plain data, so that the page and the command line draw the same. Attributes in React's spelling. */
export interface SvgNode {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children?: readonly SvgNode[];
  readonly text?: string;
}

/** Turns a paint into what SVG takes: tokens and shared fills differ between a page and a file. */
export type PaintOf = (paint: Paint) => string;

/** Up on the wall is down in SVG: the one place where y is turned over. */
export function turned(y: number): number {
  return 0 - y;
}

/** A box of the sheet as x, y, width, height in SVG. */
export function svgBox(box: Box): readonly [number, number, number, number] {
  return [tenth(box.x), tenth(turned(box.y + box.height)), tenth(box.width), tenth(box.height)];
}

export function tenth(value: number): number {
  return Math.round(value * 10) / 10;
}

/** Path text of rings: absolute starts, then steps in tenths of a millimetre, so that rounding does not add up. */
export function pathText(rings: readonly Ring[], open = false): string {
  return rings.map((ring) => ringText(ring, open)).join('');
}

function ringText(ring: Ring, open: boolean): string {
  const [first, ...rest] = ring;
  if (first === undefined) return '';
  let x = Math.round(first[0] * 10);
  let y = Math.round(turned(first[1]) * 10);
  let text = `M${x / 10} ${y / 10}`;
  for (const point of rest) {
    const nextX = Math.round(point[0] * 10);
    const nextY = Math.round(turned(point[1]) * 10);
    const dx = (nextX - x) / 10;
    const dy = (nextY - y) / 10;
    text += dy === 0 ? `h${dx}` : dx === 0 ? `v${dy}` : `l${dx} ${dy}`;
    x = nextX;
    y = nextY;
  }
  return open ? text : `${text}z`;
}

export function nodeOf(shape: Shape, paintOf: PaintOf): SvgNode {
  if (shape.kind === 'dot') {
    return {
      tag: 'circle',
      attributes: {
        cx: tenth(shape.at[0]),
        cy: tenth(turned(shape.at[1])),
        r: tenth(shape.radius),
        fill: paintOf(shape.fill),
        ...penAttributes(shape.pen, paintOf),
      },
    };
  }
  return { tag: 'path', attributes: areaAttributes(shape, paintOf) };
}

function areaAttributes(area: Area, paintOf: PaintOf): SvgNode['attributes'] {
  return {
    d: pathText(area.rings, area.open === true),
    fill: area.fill === undefined ? 'none' : paintOf(area.fill),
    ...(area.opacity === undefined ? {} : { fillOpacity: area.opacity }),
    ...penAttributes(area.pen, paintOf),
  };
}

function penAttributes(pen: Area['pen'], paintOf: PaintOf): SvgNode['attributes'] {
  if (pen === undefined) return {};
  return {
    stroke: paintOf(pen.paint),
    strokeWidth: pen.width,
    ...(pen.thin ? { vectorEffect: 'non-scaling-stroke' } : {}),
    ...(pen.dash ? { strokeDasharray: pen.dash.join(' ') } : {}),
    ...(pen.opacity === undefined ? {} : { strokeOpacity: pen.opacity }),
  };
}

/** Width and height of a drawn SVG file, px, so that the page keeps its place before the drawing is there. */
export function sizeOfSvg(svg: string): { readonly width: number; readonly height: number } {
  const [, width = '1200', height = '800'] = /^<svg[^>]* width="(\d+)" height="(\d+)"/.exec(svg) ?? [];
  return { width: Number(width), height: Number(height) };
}
