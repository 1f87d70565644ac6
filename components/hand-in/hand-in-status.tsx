'use client';

import { When } from '../time/when';
import { type HandIn, needsSignIn } from './hand-in';
import styles from './hand-in.module.css';

/** Where a hand-in is: waiting on this device, on its way, received with a receipt, or refused. Sign, word and what to do. */
export function HandInStatus(props: {
  readonly handIn: HandIn;
  readonly sending: boolean;
  readonly onSend: () => void;
}) {
  const { handIn, sending, onSend } = props;
  const { state, receipt, problem } = handIn;
  // Else it needs somebody: to wait alone is no use.
  const waits = !needsSignIn(handIn);
  if (state === 'received' && receipt) {
    return (
      <section
        className={styles.status}
        data-state="received"
        aria-labelledby="hand-in-heading"
        role="status"
      >
        <h2 id="hand-in-heading">
          <span aria-hidden="true">✓ </span>Received
        </h2>
        <p>
          Receipt <strong className={styles.receipt}>{receipt.receipt}</strong>
        </p>
        <p>
          The site has your work since <When at={receipt.handedInAt} />.{' '}
          {receipt.late && 'It was late, and is flagged as late. Your instructor decides what that means.'}
        </p>
      </section>
    );
  }
  if (state === 'refused') {
    return (
      <section className={styles.status} data-state="refused" role="alert">
        <h2>
          <span aria-hidden="true">✕ </span>Not taken
        </h2>
        <p>{problem} Your marks are still on this device. Look at the walls below, and hand in again.</p>
      </section>
    );
  }
  return (
    <section className={styles.status} data-state="waiting" role="status">
      <h2>
        <span aria-hidden="true">{sending ? '↑ ' : '… '}</span>
        {sending ? 'Sending' : 'Waiting to be sent'}
      </h2>
      <p>
        Your work is saved on this device.{' '}
        {sending
          ? 'It is on its way.'
          : waits
            ? `${problem ?? ''} It is sent by itself when this page is open and the site answers.`
            : problem}
      </p>
      {!sending && !waits && (
        <p>
          <a className="link" href="/join">
            Join your group again
          </a>
        </p>
      )}
      {!sending && (
        <button type="button" className="button button-plain" onClick={onSend}>
          Try now
        </button>
      )}
    </section>
  );
}
