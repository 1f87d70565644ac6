import { memo } from 'react';
import { hazeFilter, pictureNodes } from '../../lib/views/haze';
import type { Drawing } from '../../lib/views/shape';
import { sharedFills } from '../../lib/views/shared-fills';
import type { Wall } from '../../lib/wall/model';
import { pagePaint, svgElement } from './svg-element';

/** The drawing itself: never drawn again while the wall and the view stay. */
export const WallPicture = memo(function WallPicture({
  wall,
  drawing,
  prefix,
}: {
  readonly wall: Wall;
  readonly drawing: Drawing;
  readonly prefix: string;
}) {
  return (
    <>
      <defs>{[...sharedFills(wall, drawing, prefix), ...hazeFilter(drawing, prefix)].map(svgElement)}</defs>
      <g>{pictureNodes(drawing, prefix, pagePaint(prefix)).map(svgElement)}</g>
    </>
  );
});
