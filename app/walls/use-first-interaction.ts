'use client';

import { useEffect, useState } from 'react';

const INTERACTIONS = [
  'pointermove',
  'pointerdown',
  'touchstart',
  'keydown',
  'focusin',
  'scroll',
  'wheel',
] as const;

/** True from the reader's first move on the page. Whatever the first screen can do without is fetched then, so that it does not hold that screen up. */
export function useFirstInteraction(): boolean {
  const [interacted, setInteracted] = useState(false);
  useEffect(() => {
    if (interacted) return;
    const interact = () => setInteracted(true);
    const options = { passive: true, capture: true };
    for (const each of INTERACTIONS) window.addEventListener(each, interact, options);
    return () => {
      for (const each of INTERACTIONS) window.removeEventListener(each, interact, options);
    };
  }, [interacted]);
  return interacted;
}
