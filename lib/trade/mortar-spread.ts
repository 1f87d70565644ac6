import type { Mm } from '../units';
import { pressedRadius } from './mortar-disc';
import { type Back, type Heap, heapVolume, refuseBack } from './mortar-heaps';
import { refuseNotPositive } from './refusals';

/** What pressing did. Cells run row by row from the lower left. */
export interface Spread {
  readonly columns: number;
  readonly rows: number;
  /** Which cells of the back are covered. */
  readonly covered: readonly boolean[];
  /** How far the front ran ahead of each heap's own pressed shape, mm: for drawing it smooth (see outlineOf). */
  readonly grown: Mm;
  /** Of the back, from 0 to 100. */
  readonly contact: number;
  /** Greatest bare place that hangs together by edges, mm². */
  readonly largestBare: number;
  /** Whether a bare place touches no edge: air shut in. */
  readonly isShutIn: boolean;
  /** Mortar put on, mm³. */
  readonly volume: number;
  /** Of it, mortar that left over the edges, mm³. */
  readonly squeezedOut: number;
}

/** About how many cells lie along the back. Figures are then true to about half a per cent of the back. */
const CELLS_ALONG = 120;
/** Of the back's length, around the back: mortar further out counts as gone all the same. */
const MARGIN_SHARE = 0.4;

/**
 * Presses heaps to a thickness. A heap lower than that is not touched. The others flow evenly outward: the front is everywhere the same
 * way ahead of each heap's own pressed shape, as far as it takes for area × thickness to be the volume put on, wherever heaps meet. What
 * passes the edge of the back leaves it. A model: real mortar is stiffer, so a lifted unit shows the truth.
 * @throws RangeError for a back or thickness not above zero.
 */
export function spreadOf(back: Back, heaps: readonly Heap[], thickness: Mm): Spread {
  refuseBack(back);
  refuseNotPositive('thickness', thickness);
  const touched = heaps.filter((heap) => (heap.kind === 'dab' ? heap.radius : heap.stands) > thickness);
  const volume = heaps.reduce((sum, heap) => sum + heapVolume(heap), 0);
  const flowing = touched.reduce((sum, heap) => sum + heapVolume(heap), 0);
  const columns = CELLS_ALONG;
  const rows = Math.max(1, Math.round((back.height / back.length) * columns));
  const cell = { width: back.length / columns, height: back.height / rows };
  const { inside, grown } = wetted(touched, flowing / thickness, thickness, cell, columns, rows);
  const cells = inside.reduce((sum, wet) => sum + (wet ? 1 : 0), 0);
  const cellArea = cell.width * cell.height;
  const bare = barePlaces(inside, columns, rows);
  return {
    columns,
    rows,
    covered: inside,
    grown,
    contact: (100 * cells) / inside.length,
    largestBare: bare.most * cellArea,
    isShutIn: bare.isShutIn,
    volume,
    squeezedOut: Math.max(0, flowing - cells * cellArea * thickness),
  };
}

/** Cells on the back and in a margin of the same size around it are filled in the order of their distance, until the area is used up. */
function wetted(
  heaps: readonly Heap[],
  area: number,
  thickness: Mm,
  cell: { readonly width: Mm; readonly height: Mm },
  columns: number,
  rows: number,
): { readonly inside: readonly boolean[]; readonly grown: Mm } {
  const inside = new Array<boolean>(columns * rows).fill(false);
  if (heaps.length === 0) return { inside, grown: 0 };
  const pressed = heaps.map((heap) => pressedAlone(heap, thickness));
  const margin = Math.round(columns * MARGIN_SHARE);
  const cells: { readonly away: number; readonly place: number }[] = [];
  for (let row = -margin; row < rows + margin; row++) {
    for (let column = -margin; column < columns + margin; column++) {
      const isOn = row >= 0 && row < rows && column >= 0 && column < columns;
      const x = (column + 0.5) * cell.width;
      const y = (row + 0.5) * cell.height;
      let away = Number.POSITIVE_INFINITY;
      for (const each of pressed) away = Math.min(away, distanceTo(each, x, y));
      cells.push({ away, place: isOn ? row * columns + column : -1 });
    }
  }
  cells.sort((a, b) => a.away - b.away);
  const wet = cells.slice(0, Math.round(area / (cell.width * cell.height)));
  for (const { place } of wet) if (place >= 0) inside[place] = true;
  return { inside, grown: Math.max(0, wet.at(-1)?.away ?? 0) };
}

/** What a heap becomes when pressed, alone: a disc, or a strip that has widened across its short side. mm. */
type Pressed =
  | { readonly kind: 'disc'; readonly x: Mm; readonly y: Mm; readonly radius: Mm }
  | { readonly kind: 'strip'; readonly x: Mm; readonly y: Mm; readonly width: Mm; readonly height: Mm };

function pressedAlone(heap: Heap, thickness: Mm): Pressed {
  if (heap.kind === 'dab') {
    return { kind: 'disc', x: heap.x, y: heap.y, radius: pressedRadius(heapVolume(heap), thickness) };
  }
  const isLevel = heap.width >= heap.height;
  const grows = ((heap.stands / thickness - 1) * Math.min(heap.width, heap.height)) / 2;
  const aside = isLevel ? 0 : grows;
  const upward = isLevel ? grows : 0;
  return {
    kind: 'strip',
    x: heap.x - aside,
    y: heap.y - upward,
    width: heap.width + 2 * aside,
    height: heap.height + 2 * upward,
  };
}

/**
 * The edge of a heap's mortar after pressing, as a rectangle with rounded corners (a disc is one with a radius of half its width), not
 * yet cut off at the back's edges; null for a heap that is lower than the joint. @throws RangeError for a thickness not above zero.
 */
export function outlineOf(heap: Heap, thickness: Mm, grown: Mm) {
  refuseNotPositive('thickness', thickness);
  if ((heap.kind === 'dab' ? heap.radius : heap.stands) <= thickness) return null;
  const pressed = pressedAlone(heap, thickness);
  if (pressed.kind === 'disc') {
    const reach = pressed.radius + grown;
    return { x: pressed.x - reach, y: pressed.y - reach, width: 2 * reach, height: 2 * reach, round: reach };
  }
  const { x, y, width, height } = pressed;
  return { x: x - grown, y: y - grown, width: width + 2 * grown, height: height + 2 * grown, round: grown };
}

/** From the edge of a pressed heap; negative inside, so that the middle fills first. */
function distanceTo(pressed: Pressed, x: Mm, y: Mm): number {
  if (pressed.kind === 'disc') return Math.hypot(x - pressed.x, y - pressed.y) - pressed.radius;
  const dx = Math.abs(x - pressed.x - pressed.width / 2) - pressed.width / 2;
  const dy = Math.abs(y - pressed.y - pressed.height / 2) - pressed.height / 2;
  return Math.hypot(Math.max(dx, 0), Math.max(dy, 0)) + Math.min(Math.max(dx, dy), 0);
}

/**
 * The bare places among covered cells, which hang together by edges: cells in the greatest, and whether any touches no edge of the sheet.
 * Cells run row by row.
 */
function barePlaces(covered: readonly boolean[], columns: number, rows: number) {
  const seen = [...covered];
  let most = 0;
  let isShutIn = false;
  for (let start = 0; start < seen.length; start++) {
    if (seen[start]) continue;
    seen[start] = true;
    const patch = [start];
    let touchesEdge = false;
    for (let next = 0; next < patch.length; next++) {
      const place = patch[next] ?? 0;
      const column = place % columns;
      const row = (place - column) / columns;
      touchesEdge ||= column === 0 || column === columns - 1 || row === 0 || row === rows - 1;
      for (const [dx, dy] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const toColumn = column + dx;
        const toRow = row + dy;
        if (toColumn < 0 || toColumn >= columns || toRow < 0 || toRow >= rows) continue;
        const to = toRow * columns + toColumn;
        if (seen[to]) continue;
        seen[to] = true;
        patch.push(to);
      }
    }
    most = Math.max(most, patch.length);
    isShutIn ||= !touchesEdge;
  }
  return { most, isShutIn };
}
