import { type Drawing, onSheet } from '../../drawing/shape';
import { type FaceBox, overlaps } from '../../geometry/box';

/** The part of a view from in front that is seen through a window: nothing beside it can be seen, nor pointed at. */
export function croppedTo(drawing: Drawing, window: FaceBox): Drawing {
  const frame = drawing.frames.find(({ panel }) => panel === window.panel);
  if (frame === undefined) return drawing;
  const box = onSheet(frame, window);
  return { ...drawing, box, labels: [], spots: drawing.spots.filter((spot) => overlaps(spot, box)) };
}
