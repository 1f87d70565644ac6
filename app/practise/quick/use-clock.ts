'use client';

import { useEffect, useRef } from 'react';

const BEAT_MS = 200;

/** Tells how much time went by, beat by beat, while it runs. A page out of sight lets no time go by. */
export function useClock(runs: boolean, onPass: (ms: number) => void): void {
  const heard = useRef(onPass);
  heard.current = onPass;
  useEffect(() => {
    if (!runs) return;
    let last = Date.now();
    const beat = setInterval(() => {
      const now = Date.now();
      if (document.visibilityState === 'visible') heard.current(now - last);
      last = now;
    }, BEAT_MS);
    return () => clearInterval(beat);
  }, [runs]);
}
