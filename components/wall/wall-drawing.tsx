'use client';

import { UP_CLOSE } from '../../lib/views/viewing-conditions';
import { AskedNotice } from '../asked/asked-notice';
import { DrawnWall } from './drawn-wall';
import { useLook } from './looks/use-look';
import type { WallDrawingProps } from './wall-drawing-props';

/** A wall to look at and to point at: one view of it, drawn here or by the site. */
export function WallDrawing(props: WallDrawingProps) {
  const { surveyed, view, system, viewing = UP_CLOSE } = props;
  const { seen, tells, missing } = useLook(surveyed, view, system, viewing);
  return (
    <>
      {missing && <AskedNotice what="This look" failed={missing.failed} onAgain={missing.again} />}
      {seen && <DrawnWall {...props} {...seen} tells={tells} />}
    </>
  );
}
