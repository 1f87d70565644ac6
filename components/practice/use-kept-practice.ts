'use client';

import { type Dispatch, useEffect, useReducer, useState } from 'react';
import { formatWork, parseWork } from './kept-work';
import { FRESH, type PracticeAction, type PracticeState, practiceReducer } from './practice-state';

/** The work on one wall, kept in this tab: a reload or a way back loses nothing. `ready` once the kept work has been taken up. */
export function useKeptPractice(
  code: string,
  isPart: (id: string) => boolean,
): readonly [PracticeState, Dispatch<PracticeAction>, ready: boolean] {
  const [state, dispatch] = useReducer(practiceReducer, FRESH);
  const [ready, setReady] = useState(false);
  const key = `wall-work:${code}`;

  useEffect(() => {
    const work = parseWork(readKept(key), isPart);
    if (work) dispatch({ kind: 'take up', work });
    setReady(true);
  }, [key, isPart]);

  useEffect(() => {
    if (ready) keep(key, formatWork(state));
  }, [ready, key, state]);

  return [state, dispatch, ready];
}

function readKept(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null; // Storage is forbidden here: the work lasts as long as the page.
  }
}

function keep(key: string, text: string): void {
  try {
    sessionStorage.setItem(key, text);
  } catch {
    // As above.
  }
}
