'use client';

import { useEffect, useRef } from 'react';

const BEAT_MS = 200;

/** Reports the time that has passed, beat by beat, while it runs. None passes while the page is hidden. */
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
