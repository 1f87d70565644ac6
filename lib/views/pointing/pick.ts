import type { Drawing, Frame, Spot } from '../../drawing/shape';
import { type Box, distanceTo } from '../../geometry/box';
import type { Mm } from '../../units';
import type { PartKind } from '../../wall/part-id';
import type { Part } from '../../wall/parts';

/** Where a reader pointed: a place on the face of a panel, and how far that pointer strays, mm. */
export interface Aim {
  readonly panel: string;
  readonly x: Mm;
  readonly y: Mm;
  readonly reach: Mm;
}

/** Wider than anything one points at by a tap: they go with the parts on them. */
const WIDE: readonly PartKind[] = ['panel', 'course'];
/** Lines along other parts, not things by themselves: they give way to whatever else lies under the pointer. */
const LINES: readonly PartKind[] = ['edge', 'corner'];

/**
 * How far a point lies from the middle of a box. The box is drawn in on every side by `reach`, at most to its middle line: of two
 * parts side by side the pointer means the one whose middle it is nearer to, and a thin joint holds its own against the units round it.
 */
export function awayFrom(box: Box, x: Mm, y: Mm, reach: Mm): Mm {
  const inX = Math.min(reach, box.width / 2);
  const inY = Math.min(reach, box.height / 2);
  const middle = {
    x: box.x + inX,
    y: box.y + inY,
    width: box.width - 2 * inX,
    height: box.height - 2 * inY,
  };
  return distanceTo(middle, x, y);
}

/** The part that a pointer means, where it is drawn, and the place pointed at. */
export interface Picked {
  readonly part: string;
  readonly spot: Box;
  /** Null in a drawing that does not show the part on its face. */
  readonly aim: Aim | null;
}

/**
 * What a pointer means at a point of the sheet, of every kind of part that the drawing shows. Where nothing lies within `reach` (mm of the
 * sheet) it is the panel that the point lies on, for a place where something is wanting can be pointed at too; off the wall it is null.
 * Of two equally near parts the first drawn.
 */
export function pickAt(
  { spots, frames }: Pick<Drawing, 'spots' | 'frames'>,
  parts: ReadonlyMap<string, Part>,
  x: Mm,
  y: Mm,
  reach: Mm,
): Picked | null {
  let best: Spot | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const spot of spots) {
    const kind = parts.get(spot.part)?.kind;
    if (kind === undefined || WIDE.includes(kind) || distanceTo(spot, x, y) > reach) continue;
    const away = awayFrom(spot, x, y, reach) + (LINES.includes(kind) ? 2 * reach : 0);
    if (away >= least) continue;
    best = spot;
    least = away;
  }
  const spot = best ?? panelAt(frames, parts, x, y);
  const part = spot && parts.get(spot.part);
  return spot && part ? { part: part.id, spot, aim: aimAt(frames, part, x, y, reach) } : null;
}

function panelAt(frames: readonly Frame[], parts: ReadonlyMap<string, Part>, x: Mm, y: Mm): Spot | undefined {
  return frames
    .flatMap(({ panel, scale, x: left, y: foot }): readonly Spot[] => {
      const face = parts.get(panel);
      if (face === undefined) return [];
      const { width, height } = face;
      return [
        {
          part: panel,
          x: left + scale * face.x,
          y: foot + scale * face.y,
          width: scale * width,
          height: scale * height,
        },
      ];
    })
    .find((spot) => distanceTo(spot, x, y) === 0);
}

/** A point of the sheet as a place on the face of a part's panel. A section shows its part twice: cut, and along a strip of the face. */
function aimAt(frames: readonly Frame[], part: Part, x: Mm, y: Mm, reach: Mm): Aim | null {
  const frame = frames.find(({ panel }) => panel === part.panel);
  if (frame === undefined) return null;
  const { scale } = frame;
  const aim = { panel: part.panel, x: (x - frame.x) / scale, y: (y - frame.y) / scale, reach: reach / scale };
  return distanceTo(part, aim.x, aim.y) > aim.reach ? null : aim;
}
