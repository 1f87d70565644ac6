import type { Box, Drawing } from '../../drawing/shape';

/** A window on the face of a panel. */
export interface FaceWindow extends Box {
  readonly panel: string;
}

/** The part of a view from in front that is seen through a window: nothing beside it can be seen, nor pointed at. */
export function croppedTo(drawing: Drawing, { panel, x, y, width, height }: FaceWindow): Drawing {
  const frame = drawing.frames.find((each) => each.panel === panel);
  if (frame === undefined) return drawing;
  const box: Box = {
    x: frame.x + frame.scale * x,
    y: frame.y + frame.scale * y,
    width: frame.scale * width,
    height: frame.scale * height,
  };
  return {
    ...drawing,
    box,
    labels: [],
    spots: drawing.spots.filter(
      (spot) =>
        spot.x < box.x + box.width &&
        box.x < spot.x + spot.width &&
        spot.y < box.y + box.height &&
        box.y < spot.y + spot.height,
    ),
  };
}
