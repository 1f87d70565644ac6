import { createElement, type ReactElement } from 'react';
import type { Paint } from '../../lib/drawing/shape';
import type { SvgNode } from '../../lib/drawing/svg-nodes';

/** Plain SVG data as React elements. */
export function svgElement(node: SvgNode, key: number): ReactElement {
  const { tag, attributes, children, text } = node;
  return createElement(tag, { key, ...attributes }, text ?? children?.map(svgElement));
}

/** Paints on a page: its own tokens, and shared fills by the drawing's prefix. */
export function pagePaint(prefix: string): (paint: Paint) => string {
  return (paint) => {
    if (paint.startsWith('url:')) return `url(#${prefix}${paint.slice(4)})`;
    return paint.startsWith('--') ? `var(${paint})` : paint;
  };
}
