'use client';

import { useCallback, useEffect, useRef } from 'react';
import { keepText, readKept } from './kept-text';

/** Gathers the time in which the page is in sight, through reloads too. Gives a function that says how much it is so far, in ms. */
export function useTimeSpent(keptAs: string): () => number {
  const key = `wall-time:${keptAs}`;
  const since = useRef<number | null>(null);
  const gathered = useRef(0);
  const gather = useCallback((): number => {
    const now = performance.now();
    if (since.current !== null) gathered.current += now - since.current;
    since.current = document.visibilityState === 'visible' ? now : null;
    const ms = Math.round(gathered.current);
    keepText(key, String(ms));
    return ms;
  }, [key]);
  useEffect(() => {
    const kept = Number(readKept(key));
    gathered.current = kept > 0 && Number.isFinite(kept) ? kept : 0;
    gather();
    // Also when the page is left: it is out of sight then.
    document.addEventListener('visibilitychange', gather);
    return () => document.removeEventListener('visibilitychange', gather);
  }, [key, gather]);
  return gather;
}
