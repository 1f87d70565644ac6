'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useRef } from 'react';
import styles from './hand-in.module.css';
import { NO_ATTEMPT, useOutbox } from './use-outbox';

/** Sends what waits on this device, whichever work it is of, and says so while something does. */
export function OutboxWatch({ learner }: { readonly learner: string }) {
  const { waiting, sendNow } = useOutbox(NO_ATTEMPT, learner);
  const router = useRouter();
  const before = useRef(0);
  useEffect(() => {
    if (waiting < before.current) router.refresh();
    before.current = waiting;
  }, [waiting, router]);
  if (waiting === 0) return null;
  return (
    <section className={styles.status} data-state="waiting" role="status">
      <p>
        <strong>{waiting === 1 ? 'One hand-in waits' : `${waiting} hand-ins wait`} on this device.</strong> It
        is saved, and goes off by itself when the site answers.
      </p>
      <button type="button" className="button button-plain" onClick={sendNow}>
        Try now
      </button>
    </section>
  );
}
