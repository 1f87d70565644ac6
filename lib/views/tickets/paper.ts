import { STEEL } from '../../drawing/colours';
import { scatterOf } from '../../drawing/drawn-chance';
import { ring } from '../../drawing/rings';
import { lines, polygon, rect, type Shape } from '../../drawing/shape';
import type { Box } from '../../geometry/box';
import type { Point, Ring } from '../../geometry/polygon';
import type { Mm } from '../../units';

/** Paper and what holds it keep their own colours by night, as bricks do. */
const PAPER = '#f5efdd';
const FOLD = '#dccfae';
const RULE = '#b9a888';
const EDGE = '#22272b';
const SHADOW = '#1a1310';
/** Torn off its pad along a row of holes this far apart, mm. */
const HOLES: Mm = 14;
const EAR: Mm = 24;
/** Hangs askew by no more than this, mm over the width of the ticket. */
const ASKEW: Mm = 5;
const CLIP_WIDE: Mm = 96;
const CLIP_HIGH: Mm = 52;
const BAR_THICK: Mm = 16;

/** A paper ticket, torn from its pad, hanging by a clip from a bar of the mixer; `rules` are the heights of its ruled lines. */
export function ticketPaper(name: string, box: Box, rules: readonly Mm[]): readonly Shape[] {
  const { x, y, width, height } = box;
  const right = x + width;
  const top = y + height;
  const tilt = scatterOf(name, 1, ASKEW);
  const hung = ([px, py]: Point): Point => [px, py + (tilt * (px - x - width / 2)) / width];
  const paper: Ring = [[x, y], [right - EAR, y], [right, y + EAR], ...tornEdge(x, right, top)];
  const ear: Ring = ring(right - EAR, y, right - EAR, y + EAR, right, y + EAR);
  const hungPaper = paper.map(hung);
  return [
    ...bar(x - 20, right + 14, top + CLIP_HIGH * 0.62),
    polygon(
      hungPaper.map(([px, py]): Point => [px + 7, py - 8]),
      SHADOW,
      0.3,
    ),
    { ...polygon(hungPaper, PAPER), pen: { paint: RULE, width: 1, thin: true } },
    { ...polygon(ear.map(hung), FOLD), pen: { paint: RULE, width: 1, thin: true } },
    lines(
      rules.map((rule) => [hung([x + 18, rule]), hung([right - 18, rule])]),
      { paint: RULE, width: 1.4, thin: true },
    ),
    ...clip(x + width / 2, top),
  ];
}

/** From right to left: teeth along a row of holes. */
function tornEdge(left: Mm, right: Mm, top: Mm): Ring {
  const teeth = Math.round((right - left) / HOLES);
  const step = (right - left) / teeth;
  return Array.from({ length: teeth + 1 }, (_, index): Ring => {
    const at = right - index * step;
    return index === teeth ? [[at, top]] : ring(at, top, at - step / 2, top - 5);
  }).flat();
}

/** A round bar of the mixer's frame, the light on its upper side. */
function bar(from: Mm, to: Mm, y: Mm): readonly Shape[] {
  const width = to - from;
  return [
    rect({ x: from + 4, y: y - 6, width, height: BAR_THICK }, SHADOW, 0.28),
    { ...rect({ x: from, y, width, height: BAR_THICK }, STEEL), pen: { paint: EDGE, width: 1, thin: true } },
    rect({ x: from, y: y + BAR_THICK * 0.55, width, height: BAR_THICK * 0.2 }, '#c3ccd1', 0.8),
  ];
}

/** A sprung clip: a jaw on the paper, two bent wires round the bar. */
function clip(middle: Mm, top: Mm): readonly Shape[] {
  const half = CLIP_WIDE / 2;
  const jaw: Ring = [
    [middle - half, top - 24],
    [middle + half, top - 24],
    [middle + half * 0.82, top + 18],
    [middle - half * 0.82, top + 18],
  ];
  const wire = (side: 1 | -1): Ring => [
    [middle + side * half * 0.2, top + 16],
    [middle + side * half * 0.28, top + CLIP_HIGH],
    [middle + side * half * 0.62, top + CLIP_HIGH],
    [middle + side * half * 0.7, top + 16],
  ];
  return [
    polygon(
      jaw.map(([x, y]): Point => [x + 5, y - 6]),
      SHADOW,
      0.35,
    ),
    lines([wire(-1), wire(1)], { paint: '#4d575d', width: 5 }),
    { ...polygon(jaw, '#39444b'), pen: { paint: EDGE, width: 1, thin: true } },
    rect({ x: middle - half * 0.84, y: top + 9, width: half * 1.68, height: 4 }, '#8b979e', 0.7),
  ];
}
