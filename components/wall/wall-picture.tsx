import { memo } from 'react';
import type { Drawing } from '../../lib/views/shape';
import { sharedFills } from '../../lib/views/shared-fills';
import { nodeOf } from '../../lib/views/svg-nodes';
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
  const paint = pagePaint(prefix);
  return (
    <>
      <defs>{sharedFills(wall, prefix).map(svgElement)}</defs>
      <g>{drawing.shapes.map((shape, index) => svgElement(nodeOf(shape, paint), index))}</g>
    </>
  );
});
