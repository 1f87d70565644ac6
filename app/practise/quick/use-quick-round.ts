'use client';

import { type Dispatch, useEffect, useReducer, useState } from 'react';
import { keepText, readKept } from '../../../components/wall-page/kept-text';
import { formatBegun, parseBegun } from '../../../lib/drills/quick/begun-round';
import {
  QUICK_START,
  type QuickAction,
  type QuickState,
  quickReducer,
} from '../../../lib/drills/quick/quick-round';

/** A round of quick looks, kept in this tab: a reload goes on where it was. */
export function useQuickRound(keptAs: string): readonly [QuickState, Dispatch<QuickAction>] {
  const [state, dispatch] = useReducer(quickReducer, QUICK_START);
  const [ready, setReady] = useState(false);
  const { time, answers } = state;

  useEffect(() => {
    const begun = parseBegun(readKept(keptAs));
    if (begun) dispatch({ kind: 'take up', begun });
    setReady(true);
  }, [keptAs]);

  useEffect(() => {
    if (ready) keepText(keptAs, formatBegun({ time, answers }));
  }, [ready, keptAs, time, answers]);

  return [state, dispatch];
}
