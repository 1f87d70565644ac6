import { memo } from 'react';
import { hazeFilter, pictureNodes } from '../../lib/drawing/haze';
import type { Drawing } from '../../lib/drawing/shape';
import { sharedFills } from '../../lib/drawing/shared-fills';
import { wallColours } from '../../lib/views/wall-colours';
import type { Wall } from '../../lib/wall/model';
import { pagePaint, svgElement } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** Fills that the drawing shares. */
export const WallFills = memo(function WallFills({ wall, drawing, prefix }: Pictured) {
  return (
    <defs>
      {[...sharedFills(drawing, wallColours(wall), prefix), ...hazeFilter(drawing, prefix)].map(svgElement)}
    </defs>
  );
});

interface Pictured {
  readonly wall: Wall;
  readonly drawing: Drawing;
  readonly prefix: string;
}

/** The drawing itself, or what of it lies under or over the faces: never drawn again while the wall and the view stay. */
export const WallPicture = memo(function WallPicture({
  drawing,
  prefix,
  part,
}: Omit<Pictured, 'wall'> & { readonly part: 'all' | 'under' | 'over' }) {
  const { first = 0, parts = [] } = drawing.faces ?? {};
  const [from, to] = part === 'all' ? [0] : part === 'under' ? [0, first] : [first + parts.length];
  const nodes = pictureNodes(drawing, prefix, pagePaint(prefix));
  return <g className={styles.picture}>{nodes.slice(from, to).map(svgElement)}</g>;
});
