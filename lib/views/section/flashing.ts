import { sheetMetal } from '../../drawing/cut';
import { scatterOf } from '../../drawing/drawn-chance';
import type { NoteWish } from '../../drawing/note';
import { ring } from '../../drawing/rings';
import { type Label, lines, type Pieces, type Shape } from '../../drawing/shape';
import type { Point, Ring } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import { heapsAt } from '../../wall/drainage';
import type { Flashing } from '../../wall/flashing';
import type { Support, Wall } from '../../wall/model';
import type { PanelSurvey } from '../../wall/survey';
import { flashingAt, framesFace } from './cut-parts';
import { length } from './sheet';

/** How a flashing of an earlier engine is drawn, whose shape nobody tells: up the backing and past the edge under it, mm. */
const UNTOLD = { up: 200, past: 9 } as const;
/** It comes down to the units over this height, and lies so far off the backing and its support, mm. */
const FALL: Mm = 46;
const OFF: Mm = 2;

/** A cut flashing, from the backing down and out over the edge of its support, with what lies on it; and what is to be noted of it. */
interface CutFlashing {
  readonly shapes: readonly Shape[];
  readonly notes: readonly NoteWish[];
}

export function cutFlashing(
  wall: Wall,
  survey: PanelSurvey,
  support: Support,
  x: Mm,
  system: LengthSystem,
): CutFlashing {
  const laid = flashingAt(wall, survey, x, support.y);
  if (laid === undefined) return { shapes: [], notes: [] };
  const { y, shape } = laid;
  const edge = shape?.front ?? support.front + UNTOLD.past;
  const [top, ...down] = backOf(wall, support, y, y + (shape?.up ?? UNTOLD.up));
  const out = edgeOf(support, edge, y);
  const tip: Point = out[out.length - 1] ?? [edge, y];
  return {
    shapes: [...heapOn(wall, laid, x), ...sheetMetal([top, ...down, ...out])],
    notes:
      shape === undefined
        ? [{ target: tip, y: y + 6, text: 'flashing' }]
        : [
            { target: top, y: top[1], text: `flashing, up ${length(shape.up, system)}` },
            { target: tip, y: y + 6, text: edgeText(edge - support.front, system) },
          ],
  };
}

function edgeText(past: Mm, system: LengthSystem): string {
  return past > 0 ? `past the edge ${length(past, system)}` : 'stops inside the edge';
}

/** From its upper edge to where it lies on the support. Over an angle with its leg behind the units it goes over that, where it goes so far up. */
function backOf(wall: Wall, { angle, back }: Support, y: Mm, up: Mm): readonly [Point, ...Point[]] {
  const behind = framesFace(wall) + OFF;
  const units = -wall.family.depth;
  if (angle === undefined || back > units) {
    const foot: Point = [units - (angle ? 3 : 4), y + OFF];
    return [[behind, up], [behind, Math.min(up, y + FALL)], foot];
  }
  const leg = back + angle.thickness + 1.5;
  const crest = y - angle.thickness + angle.vertical + OFF;
  if (up <= crest)
    return [
      [leg, up],
      [leg, y + 1.5],
    ];
  return [
    [behind, up],
    [behind, Math.min(up, crest + FALL)],
    [Math.max(back, behind), crest],
    [leg, crest],
    [leg, y + 1.5],
  ];
}

/** Out over the edge and bent down to a drip, or to where it stops inside. */
function edgeOf({ front }: Support, edge: Mm, y: Mm): Ring {
  return edge > front ? ring(Math.max(front, edge - 6), y + 1.5, edge, y - 7) : ring(edge, y + 1.5);
}

/** Droppings against the back of the units, on the fall of the flashing. */
function heapOn(wall: Wall, flashing: Flashing, x: Mm): readonly Shape[] {
  const units = -wall.family.depth;
  const wide = units - framesFace(wall) - OFF;
  return heapsAt(wall, flashing, x).map(({ y, height, fromX }): Shape => {
    const reach = Math.min(1, height / FALL);
    const [back, low] = [units - wide * reach, y + FALL * reach];
    const rough = scatterOf(`${fromX}`, 70, 3);
    return {
      kind: 'area',
      rings: [
        [
          [units, y + OFF],
          [units, y + height],
          [(units + back) / 2, Math.max(low, y + height - 3 + rough)],
          [back, Math.max(low, y + height - 6)],
          [back, low],
        ],
      ],
      fill: 'url:mortar',
      pen: { paint: '#5c554c', width: 0.7 },
    };
  });
}

/** The whole flashing over an opening from in front: its ends turned up, and how high. */
export function flashingAlong(wall: Wall, flashing: Flashing | undefined, system: LengthSystem): Pieces {
  const shape = flashing?.shape;
  if (flashing === undefined || shape === undefined) return { shapes: [], labels: [] };
  const { fromX, toX, y } = flashing;
  const { leftDam, rightDam } = shape;
  const sheet = ring(fromX, y + leftDam, fromX, y, toX, y, toX, y + rightDam);
  const over = y + 2 * wall.gauge;
  const end = (x: Mm, high: Mm, anchor: Label['anchor']): Label => ({
    at: [x, over],
    text: `end dam ${length(high, system)}`,
    anchor,
    plate: true,
  });
  return {
    shapes: [
      lines([sheet], { paint: '#f4f0e8', width: 6, thin: true }),
      lines([sheet], { paint: '#2a5c8f', width: 3, thin: true }),
    ],
    labels: [end(fromX, leftDam, 'start'), end(toX, rightDam, 'end')],
  };
}
