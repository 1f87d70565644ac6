import { useEffect, useRef } from 'react';
import type { Attempt } from '../../lib/learning/attempt';
import { type Done, doneAt } from './done-at';

type WithoutDone<T> = T extends Attempt ? Omit<T, 'version' | 'id' | 'at' | 'zone' | 'spentMs'> : never;

/** Puts what was done into the practice record, once: when it is there, after it was not. `known`: what is not of this moment. */
export function useRecorded(done: WithoutDone<Attempt> | null, known: Partial<Done> = {}): void {
  const isIn = useRef(false);
  useEffect(() => {
    if (done === null) isIn.current = false;
    if (done === null || isIn.current) return;
    isIn.current = true;
    const attempt: Attempt = { ...doneAt(null), ...known, ...done };
    import('./add-attempt').then(
      ({ addAttempt }) => addAttempt(attempt),
      () => undefined,
    );
  });
}
