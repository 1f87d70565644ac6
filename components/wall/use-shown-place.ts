'use client';

import { useEffect, useRef } from 'react';
import type { Box } from '../../lib/geometry/box';
import type { Seen } from './gestures/use-seen-box';
import { useSame } from './use-same';

/** Where nothing can be picked the drawing shows by itself what there is to see. */
export function useShownPlace(canPick: boolean, selected: Box | null, { showWhole, closeTo }: Seen): void {
  // With the picking over (handed in, told) the whole wall is to be seen: what was missed lies elsewhere.
  const couldPick = useRef(canPick);
  useEffect(() => {
    if (couldPick.current && !canPick) showWhole();
    couldPick.current = canPick;
  }, [canPick, showWhole]);

  // What is selected then is what the reader asked to be shown.
  const showing = useSame(canPick ? null : selected);
  useEffect(() => {
    if (showing !== null) closeTo(showing);
  }, [showing, closeTo]);
}
