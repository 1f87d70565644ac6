import { BY_DAY } from './colours';
import { hazeFilter, pictureNodes } from './haze';
import { labelNodes } from './label-nodes';
import type { Drawing, Paint, Shape } from './shape';
import { type FillColours, sharedFills } from './shared-fills';
import { nodeOf, type SvgNode, svgBox } from './svg-nodes';

const FONT = "'Atkinson Hyperlegible Next', Verdana, sans-serif";

/**
 * A drawing that stands alone, by day, with every colour in it, `width` px wide; its texts can still be read where it is shown as narrow
 * as `readAt` px. `over` lies on it: marks as large as the screen wants them.
 */
export function svgFile(
  drawing: Drawing,
  colours: FillColours,
  width: number,
  over: (mmPerPx: number) => readonly Shape[] = () => [],
  readAt = width,
): string {
  const [x, y, wide, high] = svgBox(drawing.box);
  const mmPerPx = wide / width;
  const body: readonly SvgNode[] = [
    {
      tag: 'defs',
      attributes: {},
      children: [...sharedFills(drawing, colours, ''), ...hazeFilter(drawing, '')],
    },
    { tag: 'rect', attributes: { x, y, width: wide, height: high, fill: printedPaint('--paper') } },
    ...pictureNodes(drawing, '', printedPaint),
    ...over(mmPerPx).map((shape) => nodeOf(shape, printedPaint)),
    ...labelNodes(drawing.labels, wide / readAt, printedPaint),
  ];
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `${x} ${y} ${wide} ${high}`,
    width,
    height: Math.round(high / mmPerPx),
    fontFamily: FONT,
  };
  return `${textOf({ tag: 'svg', attributes, children: body })}\n`;
}

function printedPaint(paint: Paint): string {
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
