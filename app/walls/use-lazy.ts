'use client';

import { useCallback, useEffect, useState } from 'react';

/** A piece of the page that is fetched after the first scripts. */
export interface Lazy<T> {
  /** Null until it is here. */
  readonly loaded: T | null;
  readonly failed: boolean;
  readonly fetchAgain: () => void;
}

/** Fetches a piece of the page once it is wanted. `load` must stay the same function. */
export function useLazy<T>(load: () => Promise<T>, wanted: boolean): Lazy<T> {
  const [loaded, setLoaded] = useState<T | null>(null);
  const [failed, setFailed] = useState(false);
  const fetchIt = useCallback(() => {
    setFailed(false);
    load().then(
      (arrived) => setLoaded(() => arrived),
      () => setFailed(true),
    );
  }, [load]);
  useEffect(() => {
    if (wanted) fetchIt();
  }, [wanted, fetchIt]);
  return { loaded, failed, fetchAgain: fetchIt };
}
