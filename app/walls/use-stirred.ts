'use client';

import { useEffect, useState } from 'react';

const STIRS = ['pointermove', 'pointerdown', 'touchstart', 'keydown', 'focusin', 'scroll', 'wheel'] as const;

/** True from the reader's first stir on the page: what is not needed for the first look is fetched then, and not against it. */
export function useStirred(): boolean {
  const [stirred, setStirred] = useState(false);
  useEffect(() => {
    if (stirred) return;
    const stir = () => setStirred(true);
    const options = { passive: true, capture: true };
    for (const each of STIRS) window.addEventListener(each, stir, options);
    return () => {
      for (const each of STIRS) window.removeEventListener(each, stir, options);
    };
  }, [stirred]);
  return stirred;
}
