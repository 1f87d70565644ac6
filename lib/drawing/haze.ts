import type { Drawing } from './shape';
import { nodeOf, type PaintOf, type SvgNode } from './svg-nodes';

/** The blur of a drawing seen from afar: one filter for the whole picture. */
export function hazeFilter({ haze }: Drawing, prefix: string): readonly SvgNode[] {
  if (haze === undefined) return [];
  const blur: SvgNode = {
    tag: 'feGaussianBlur',
    attributes: { stdDeviation: Math.round(haze.blur * 1000) / 1000 },
  };
  return [{ tag: 'filter', attributes: { id: `${prefix}haze` }, children: [blur] }];
}

/** The shapes of a drawing, back to front; those that distance blurs in a group of their own. */
export function pictureNodes(
  { shapes, haze }: Drawing,
  prefix: string,
  paintOf: PaintOf,
): readonly SvgNode[] {
  const nodes = shapes.map((shape) => nodeOf(shape, paintOf));
  if (haze === undefined) return nodes;
  const far: SvgNode = {
    tag: 'g',
    attributes: { filter: `url(#${prefix}haze)` },
    children: nodes.slice(0, haze.shapes),
  };
  return [far, ...nodes.slice(haze.shapes)];
}
