'use client';

import { useCallback, useEffect, useRef } from 'react';
import { keepText, readKept } from './kept-text';

/** Adds up the time for which the page is visible, across reloads. Returns a function that gives the total so far, ms. */
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
    // Leaving the page hides it too.
    document.addEventListener('visibilitychange', gather);
    return () => document.removeEventListener('visibilitychange', gather);
  }, [key, gather]);
  return gather;
}
