import type { LengthSystem } from '../units';
import type { Wall } from '../wall/model';
import { BY_DAY } from './colours';
import { drawingOf } from './draw-view';
import { frontPicture } from './front';
import { hazeFilter, pictureNodes } from './haze';
import { labelNodes } from './label-nodes';
import { type Looking, UP_CLOSE } from './looking';
import { type MarkBox, markShapes } from './mark-shapes';
import { parseView } from './parse-view';
import type { Drawing, Paint } from './shape';
import { sharedFills } from './shared-fills';
import { nodeOf, type SvgNode, svgBox } from './svg-nodes';
import type { View } from './view';

/** Width on paper or on a page that text is sized for, px. */
const WIDTH = 1200;
const FONT = "'Atkinson Hyperlegible Next', Verdana, sans-serif";

/**
 * A whole SVG file of one view, by day, with every colour in it; `marks` are boxes on a panel's face, drawn where the view shows
 * that face. Lengths in `system`, seen as `looking` says.
 */
export function svgOf(
  wall: Wall,
  view: View,
  marks: readonly MarkBox[] = [],
  system: LengthSystem = 'mm',
  looking: Looking = UP_CLOSE,
): string {
  return fileOf(wall, drawingOf(wall, view, system, looking), marks);
}

/** A whole SVG file of the wall from in front by day, with no dimensions: for a page that shows it small. */
export function pictureOf(wall: Wall): string {
  return fileOf(wall, frontPicture(wall), []);
}

function fileOf(wall: Wall, drawing: Drawing, marks: readonly MarkBox[]): string {
  const [x, y, width, height] = svgBox(drawing.box);
  const mmPerPx = width / WIDTH;
  const body: readonly SvgNode[] = [
    {
      tag: 'defs',
      attributes: {},
      children: [...sharedFills(wall, drawing, ''), ...hazeFilter(drawing, '')],
    },
    { tag: 'rect', attributes: { x, y, width, height, fill: printedPaint('--paper') } },
    ...pictureNodes(drawing, '', printedPaint),
    ...markShapes(drawing, marks, mmPerPx).map((shape) => nodeOf(shape, printedPaint)),
    ...labelNodes([...drawing.labels], mmPerPx, printedPaint),
  ];
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `${x} ${y} ${width} ${height}`,
    width: WIDTH,
    height: Math.round(height / mmPerPx),
    fontFamily: FONT,
  };
  return `${textOf({ tag: 'svg', attributes, children: body })}\n`;
}

/** A whole SVG file of the view named in a text, as parseView reads it. @throws ViewError */
export function printSvg(wall: Wall, view: string, system: LengthSystem = 'mm'): string {
  return svgOf(wall, parseView(wall, view), [], system);
}

export function printedPaint(paint: Paint): string {
  if (paint.startsWith('url:')) return `url(#${paint.slice(4)})`;
  return paint.startsWith('--') ? (BY_DAY[paint] ?? '#000000') : paint;
}

/** Spelled with a hyphen in a file; every other attribute is spelled as React spells it. */
const HYPHENED = /^(?:stroke|fill|stop|font|text|vector|dominant)[A-Z]/;

function textOf({ tag, attributes, children, text }: SvgNode): string {
  const spelled = Object.entries(attributes)
    .map(([name, value]) => ` ${spelling(name)}="${escaped(String(value))}"`)
    .join('');
  const inside = `${escaped(text ?? '')}${(children ?? []).map(textOf).join('\n')}`;
  return inside === '' ? `<${tag}${spelled}/>` : `<${tag}${spelled}>${inside}</${tag}>`;
}

function spelling(name: string): string {
  return HYPHENED.test(name) ? name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`) : name;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
