'use client';

import { useRouter } from 'next/navigation';
import { type ReactNode, useEffect, useState } from 'react';
import { hasFields } from '../../../../../lib/json/read-json';
import styles from './show.module.css';

/** How often the room's marks are asked for, ms. */
const EVERY_MS = 2000;

interface Counts {
  readonly handedIn: number;
  readonly saysSound: number;
}

/**
 * The page for a projector. It asks every two seconds whether more was handed in, and only then draws afresh; the drawing itself
 * comes from the server, with or without the key.
 */
export function Show(props: {
  readonly marksAt: string;
  readonly first: Counts;
  readonly title: string;
  readonly places: Readonly<Record<'before' | 'after', string | null>> &
    Readonly<Record<'key' | 'back', string>>;
  readonly withKey: boolean;
  readonly picture: ReactNode;
  readonly keyList: ReactNode;
}) {
  const { marksAt, first, title, places, withKey, picture, keyList } = props;
  const router = useRouter();
  const [lost, setLost] = useState(false);
  const { handedIn, saysSound } = first;

  useEffect(() => {
    const timer = setInterval(async () => {
      const counts = await askFor(marksAt);
      setLost(counts === null);
      if (counts !== null && (counts.handedIn !== handedIn || counts.saysSound !== saysSound))
        router.refresh();
    }, EVERY_MS);
    return () => clearInterval(timer);
  }, [marksAt, handedIn, saysSound, router]);

  return (
    <div className={styles.show}>
      <h1>{title}</h1>
      <p className={styles.counts} role="status">
        <strong>{handedIn}</strong> handed in, <strong>{saysSound}</strong> say sound.
        {lost && ' No connection: the picture may be old.'}
      </p>
      <nav className={`bar ${styles.buttons}`} aria-label="Show">
        {places.before && (
          <a className="button button-plain" href={places.before}>
            Wall before
          </a>
        )}
        <a className="button" href={places.key}>
          {withKey ? 'Hide the key' : 'Show the key'}
        </a>
        {places.after && (
          <a className="button button-plain" href={places.after}>
            Next wall
          </a>
        )}
        <a className={styles.quiet} href={places.back}>
          Stop showing
        </a>
      </nav>
      {picture}
      <div className={styles.key}>{keyList}</div>
    </div>
  );
}

/** Null when the site does not answer. */
async function askFor(address: string): Promise<Counts | null> {
  try {
    const answer = await fetch(address);
    const counts: unknown = answer.ok ? await answer.json() : null;
    return hasFields(counts, { handedIn: 'number', saysSound: 'number' }) ? counts : null;
  } catch {
    return null;
  }
}
