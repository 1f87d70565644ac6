'use client';

import Link from 'next/link';
import { lazy, Suspense, useState } from 'react';
import type { DrawingName } from '../trade/drawings';
import styles from './lesson.module.css';

// Not next/dynamic: what it brings along would be fetched with every lesson.
const DrawingByName = lazy(async () => ({
  default: (await import('../trade/drawing-by-name')).DrawingByName,
}));

/** A drawing that computes, fetched when the reader opens it. Without script the text says what it is, and the lesson does without it. */
export function DrawingSlot(props: {
  readonly name: DrawingName;
  readonly title: string;
  readonly summary: string;
}) {
  const { name, title, summary } = props;
  const [isOpen, setOpen] = useState(false);
  return (
    <div className={styles.slot}>
      <p>
        <strong>Try it: {title}.</strong> {summary}
      </p>
      <p className={styles.scripted}>
        <button
          type="button"
          className="button button-plain"
          aria-expanded={isOpen}
          onClick={() => setOpen(!isOpen)}
        >
          {isOpen ? 'Close' : 'Open'} the drawing
        </button>{' '}
        <Link href={`/drawings/${name}`} prefetch={false}>
          Open it on its own page
        </Link>
      </p>
      {isOpen && (
        <Suspense>
          <DrawingByName name={name} />
        </Suspense>
      )}
      <p className={styles.unscripted}>
        This drawing needs JavaScript. You can follow the lesson without it.
      </p>
    </div>
  );
}
