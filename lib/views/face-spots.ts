import type { Frame, Spot } from '../drawing/shape';
import type { Wall } from '../wall/model';
import { type PartKind, partsOf } from '../wall/parts';

/** Where the parts of the wall's faces lie on the sheet: those of the kinds that the view shows. Mixings lie nowhere. */
export function faceSpots(
  wall: Wall,
  frames: readonly Frame[],
  shows: (kind: PartKind) => boolean,
): readonly Spot[] {
  const byPanel = new Map(frames.map((frame) => [frame.panel, frame]));
  return [...partsOf(wall).values()].flatMap(({ id, kind, panel, x, y, width, height }) => {
    const frame = byPanel.get(panel);
    if (frame === undefined || kind === 'batch' || !shows(kind)) return [];
    return [
      {
        part: id,
        x: frame.x + frame.scale * x,
        y: frame.y + frame.scale * y,
        width: frame.scale * width,
        height: frame.scale * height,
      },
    ];
  });
}
