'use client';

import { useCallback, useEffect, useSyncExternalStore } from 'react';
import type { AskedOfSite } from './asked-of-site';

export interface Asked<T> {
  /** Null while it is not here. */
  readonly answer: T | null;
  readonly failed: boolean;
  readonly again: () => void;
}

const NEVER = () => () => undefined;

/** Asks the site; of null nothing is asked. What failed is asked again when the network comes back. */
export function useAsked<T>(source: AskedOfSite<T> | null, question: string | null): Asked<T> {
  const read = () => (question === null ? undefined : source?.answerTo(question));
  const answer = useSyncExternalStore(source?.subscribe ?? NEVER, read, read);
  const again = useCallback(() => {
    if (question !== null) source?.want(question);
  }, [source, question]);
  useEffect(() => {
    again();
    window.addEventListener('online', again);
    return () => window.removeEventListener('online', again);
  }, [again]);
  return {
    answer: answer === undefined || answer === 'failed' ? null : answer,
    failed: answer === 'failed',
    again,
  };
}
