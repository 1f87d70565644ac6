'use client';

import { useState } from 'react';
import type { OpenWall } from '../../lib/wall-page/open-wall';
import { viewOf } from '../../lib/wall-page/view-choices';

/** Which look of a wall is chosen, and which unit is lifted in it. */
export function useStage(open: OpenWall, first = 'front') {
  const [viewKey, setViewKey] = useState(first);
  const [lifted, setLifted] = useState(open.firstUnit);
  return {
    viewKey,
    view: viewOf(viewKey, lifted, open.wall),
    lifted,
    liftedName: open.nameOf(lifted),
    choose: setViewKey,
    lift: setLifted,
    step: (along: 'course' | 'wall', by: 1 | -1) =>
      setLifted(along === 'course' ? open.unitFrom(lifted, by) : open.courseFrom(lifted, by)),
  };
}
