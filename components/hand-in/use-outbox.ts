'use client';

import { useCallback, useEffect, useRef, useState } from 'react';
import type { HandIn, WallAnswer } from './hand-in';
import { type Outbox, openOutbox } from './outbox';

/** The hand-in of an attempt on this device: undefined until the device was asked. */
export interface OutboxState {
  readonly handIn: HandIn | null | undefined;
  readonly sending: boolean;
  /** How many hand-ins of the learner wait on this device. */
  readonly waiting: number;
  /** Why nothing can be kept on this device, or null. */
  readonly problem: string | null;
  readonly put: (walls: readonly WallAnswer[]) => Promise<void>;
  readonly sendNow: () => void;
}

/** Name of no attempt: the page only watches over what waits. */
export const NO_ATTEMPT = '';

/**
 * Keeps a hand-in on the device and sends it until the site has it: at once, when the page opens, when the network or the reader
 * comes back, and after a wait that grows.
 */
export function useOutbox(attempt: string, learner: string): OutboxState {
  const [handIn, setHandIn] = useState<HandIn | null>();
  const [sending, setSending] = useState(false);
  const [waiting, setWaiting] = useState(0);
  const [problem, setProblem] = useState<string | null>(null);
  const outbox = useRef<Promise<Outbox>>(undefined);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const flushing = useRef(false);

  const flush = useCallback(async () => {
    if (flushing.current) return;
    flushing.current = true;
    clearTimeout(timer.current);
    try {
      outbox.current ??= openOutbox();
      const opened = await outbox.current;
      const now = (await opened.find(attempt)) ?? null;
      setHandIn(now);
      setSending(now?.state === 'waiting');
      setWaiting(await opened.waiting(learner));
      const wait = await opened.flush(learner);
      setHandIn((await opened.find(attempt)) ?? null);
      setWaiting(await opened.waiting(learner));
      if (wait !== null) timer.current = setTimeout(flush, wait);
    } catch {
      setHandIn(null);
    } finally {
      setSending(false);
      flushing.current = false;
    }
  }, [attempt, learner]);

  useEffect(() => {
    const whenSeen = () => {
      if (document.visibilityState === 'visible') void flush();
    };
    void flush();
    window.addEventListener('online', flush);
    document.addEventListener('visibilitychange', whenSeen);
    return () => {
      clearTimeout(timer.current);
      window.removeEventListener('online', flush);
      document.removeEventListener('visibilitychange', whenSeen);
    };
  }, [flush]);

  const put = async (walls: readonly WallAnswer[]) => {
    try {
      outbox.current ??= openOutbox();
      setHandIn(await (await outbox.current).put(attempt, learner, walls));
      setProblem(null);
      // Best effort: asks the browser not to clear this site's storage when the disk is full.
      void navigator.storage?.persist?.();
    } catch {
      outbox.current = undefined;
      setProblem(
        'This device cannot keep your hand-in. Free some space or leave private browsing. Your marks are still here.',
      );
      return;
    }
    await flush();
  };

  return { handIn, sending, waiting, problem, put, sendNow: () => void flush() };
}
