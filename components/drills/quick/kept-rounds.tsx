'use client';

import { useState } from 'react';

/** What the device keeps of quick looks: the reader may take it away or erase it. */
export function KeptRounds(props: {
  /** What is kept, as text; null when nothing is. */
  readonly text: string | null;
  /** Why the kept text cannot be read, or null. */
  readonly unknown: string | null;
  readonly onErase: () => void;
}) {
  const { text, unknown, onErase } = props;
  const [asked, setAsked] = useState(false);
  if (text === null) return null;
  return (
    <section aria-labelledby="kept-heading">
      <h2 id="kept-heading">What this device keeps</h2>
      {unknown ? (
        <p role="alert">
          There is a record of quick looks here, but {unknown}. It is left as it is, and new rounds are not
          added to it. You can take it away, or erase it and begin again.
        </p>
      ) : (
        <p>Your answers stay in this browser, and nobody else can see them.</p>
      )}
      <p className="row">
        <a
          className="button button-plain"
          download="quick-looks.json"
          href={`data:application/json;charset=utf-8,${encodeURIComponent(text)}`}
        >
          Download it as a file
        </a>
        {asked ? (
          <>
            <button type="button" className="button" onClick={onErase}>
              Yes, delete it
            </button>
            <button type="button" className="button button-plain" onClick={() => setAsked(false)}>
              Keep it
            </button>
          </>
        ) : (
          <button type="button" className="button button-plain" onClick={() => setAsked(true)}>
            Delete it
          </button>
        )}
      </p>
    </section>
  );
}
