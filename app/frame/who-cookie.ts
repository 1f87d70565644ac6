'use client';

import { useSyncExternalStore } from 'react';

/** Whose links the header shows. A hint only, from a cookie that script may read: every page asks the server again. */
export type Who = 'nobody' | 'desk' | 'learner';

/** Read in the browser, so that pages written at build time stay the same for all. */
export function useWho(): Who {
  return useSyncExternalStore(subscribe, whoFromCookies, () => 'nobody');
}

function whoFromCookies(): Who {
  const [, who] = /(?:^|; )(?:__Host-)?who=(desk|learner)/.exec(document.cookie) ?? [];
  return who === 'desk' || who === 'learner' ? who : 'nobody';
}

// Signing in and out loads a whole new page; only another tab can change it under this one.
function subscribe(onChange: () => void): () => void {
  document.addEventListener('visibilitychange', onChange);
  return () => document.removeEventListener('visibilitychange', onChange);
}
