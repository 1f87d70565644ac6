import { type Frame, onSheet, type Spot } from '../drawing/shape';
import type { PartKind } from '../wall/part-id';
import type { Part } from '../wall/parts';

/** Where the parts of the wall's faces lie on the sheet: those of the kinds that the view shows. Mixings lie nowhere. */
export function faceSpots(
  parts: ReadonlyMap<string, Part>,
  frames: readonly Frame[],
  shows: (kind: PartKind) => boolean,
): readonly Spot[] {
  const byPanel = new Map(frames.map((frame) => [frame.panel, frame]));
  return [...parts.values()].flatMap((part) => {
    const frame = byPanel.get(part.panel);
    if (frame === undefined || part.kind === 'batch' || !shows(part.kind)) return [];
    return [{ part: part.id, ...onSheet(frame, part) }];
  });
}
