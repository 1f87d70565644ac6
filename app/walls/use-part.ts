'use client';

import { useCallback, useEffect, useState } from 'react';

export interface Fetched<T> {
  /** Null until it is here. */
  readonly part: T | null;
  readonly failed: boolean;
  readonly fetchAgain: () => void;
}

/** Fetches a part of the page once it is wanted. `load` must stay the same function. */
export function usePart<T>(load: () => Promise<T>, wanted: boolean): Fetched<T> {
  const [part, setPart] = useState<T | null>(null);
  const [failed, setFailed] = useState(false);
  const fetchIt = useCallback(() => {
    setFailed(false);
    load().then(
      (loaded) => setPart(() => loaded),
      () => setFailed(true),
    );
  }, [load]);
  useEffect(() => {
    if (wanted) fetchIt();
  }, [wanted, fetchIt]);
  return { part, failed, fetchAgain: fetchIt };
}
