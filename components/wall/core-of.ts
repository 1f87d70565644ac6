import { type Drawing, onSheet } from '../../lib/drawing/shape';
import { type Box, boxRound } from '../../lib/geometry/box';
import type { Part } from '../../lib/wall/parts';

/** Where the walls themselves lie on a sheet, without the lengths, the sky and the ground round them; null where none is seen whole. */
export function coreOf({ frames }: Drawing, parts: ReadonlyMap<string, Part>): Box | null {
  const walls = frames.flatMap((frame) => {
    const panel = parts.get(frame.panel);
    return panel ? [onSheet(frame, panel)] : [];
  });
  return walls.length > 0 ? boxRound(walls) : null;
}
