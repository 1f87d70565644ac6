'use client';

import { useEffect, useRef } from 'react';
import type { Box } from '../../lib/geometry/box';
import type { Seen } from './use-seen-box';

/** Where nothing can be picked the drawing shows by itself what there is to see. */
export function useShownPlace(canPick: boolean, selected: Box | null, { showWhole, closeTo }: Seen): void {
  // With the picking over (handed in, told) the whole wall is to be seen: what was missed lies elsewhere.
  const couldPick = useRef(canPick);
  useEffect(() => {
    if (couldPick.current && !canPick) showWhole();
    couldPick.current = canPick;
  }, [canPick, showWhole]);

  // What is selected then is what the reader asked to be shown.
  const showing = JSON.stringify(canPick ? null : selected);
  useEffect(() => {
    const box = JSON.parse(showing) as Box | null;
    if (box !== null) closeTo(box);
  }, [showing, closeTo]);
}
