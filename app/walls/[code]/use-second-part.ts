'use client';

import { useCallback, useEffect, useState } from 'react';
import type { SecondPart } from './second-part';

export interface Fetched {
  /** Null until it is here. */
  readonly part: SecondPart | null;
  readonly failed: boolean;
  readonly fetchAgain: () => void;
}

/** Fetches the second part of the page as soon as the first one stands. */
export function useSecondPart(): Fetched {
  const [part, setPart] = useState<SecondPart | null>(null);
  const [failed, setFailed] = useState(false);
  const fetchIt = useCallback(() => {
    setFailed(false);
    import('./second-part').then(
      ({ SECOND_PART }) => setPart(SECOND_PART),
      () => setFailed(true),
    );
  }, []);
  useEffect(fetchIt, [fetchIt]);
  return { part, failed, fetchAgain: fetchIt };
}
