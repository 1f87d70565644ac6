'use client';

import { type Dispatch, useEffect, useReducer, useState } from 'react';
import { keepText, readKept } from './kept-text';
import { formatWork, parseWork } from './kept-work';
import { FRESH, type WorkAction, type WorkState, workReducer } from './work-state';

/** The work on one wall, kept in this tab under a name. `ready` once the kept work has been taken up. */
export function useKeptWork(
  keptAs: string,
  isPart: (id: string) => boolean,
): readonly [WorkState, Dispatch<WorkAction>, ready: boolean] {
  const [state, dispatch] = useReducer(workReducer, FRESH);
  const [ready, setReady] = useState(false);
  const key = `wall-work:${keptAs}`;

  useEffect(() => {
    const work = parseWork(readKept(key), isPart);
    if (work) dispatch({ kind: 'take up', work });
    setReady(true);
  }, [key, isPart]);

  useEffect(() => {
    if (ready) keepText(key, formatWork(state));
  }, [ready, key, state]);

  return [state, dispatch, ready];
}
