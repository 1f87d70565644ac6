'use client';

import { useEffect, useState } from 'react';
import styles from './hand-in.module.css';
import { type Progress, progressOf } from './kept-answers';

const WORDS: Readonly<Record<Progress, string>> = {
  'not begun': '○ Not begun',
  begun: '◐ Begun, saved on this device',
  done: '✓ Done, saved on this device',
};

/** The walls of an attempt with how far each is, and the way to hand them in. Asks once more while a wall is not done. */
export function WallList(props: {
  readonly attempt: string;
  readonly walls: readonly { readonly place: number; readonly kind: string }[];
  readonly addressOf: (place: number) => string;
  /** To change a wall that is done. */
  readonly onChange: (place: number) => void;
  readonly onHandIn: () => void;
}) {
  const { attempt, walls, addressOf, onChange, onHandIn } = props;
  const [progress, setProgress] = useState<readonly Progress[]>();
  const [asked, setAsked] = useState(false);
  // What is kept on the device is only known here.
  useEffect(() => {
    const look = () => setProgress(walls.map(({ place }) => progressOf(attempt, place)));
    look();
    // Another tab of the same work.
    window.addEventListener('storage', look);
    return () => window.removeEventListener('storage', look);
  }, [attempt, walls]);
  if (!progress) return <p role="status">One moment …</p>;
  const open = walls.filter((_, index) => progress[index] !== 'done').map(({ place }) => place);
  return (
    <>
      <ol className={styles.walls}>
        {walls.map(({ place, kind }, index) => {
          const isDone = progress[index] === 'done';
          return (
            <li key={place}>
              {isDone ? (
                <span>
                  <strong>Wall {place}</strong> · {kind}
                </span>
              ) : (
                <a href={addressOf(place)}>
                  Wall {place} · {kind}
                </a>
              )}
              <span>
                {WORDS[progress[index] ?? 'not begun']}{' '}
                {isDone && (
                  <button
                    type="button"
                    className="button button-plain"
                    onClick={() => onChange(place)}
                    aria-label={`Change wall ${place}`}
                  >
                    Change
                  </button>
                )}
              </span>
            </li>
          );
        })}
      </ol>
      {open.length > 0 && asked && (
        <p role="alert">
          {open.length === 1
            ? `Wall ${open[0]} is not done.`
            : `${open.length} walls are not done: ${open.join(', ')}.`}{' '}
          What you have not marked counts as not found.
        </p>
      )}
      <div className={styles.steps}>
        <button
          type="button"
          className={open.length > 0 ? 'button button-plain' : 'button'}
          onClick={() => (open.length > 0 && !asked ? setAsked(true) : onHandIn())}
        >
          {open.length > 0 && asked
            ? 'Hand in all the same'
            : `Hand in ${walls.length === 1 ? 'the wall' : `all ${walls.length} walls`}`}
        </button>
      </div>
      <p>
        Nothing is handed in yet. You can go on without a network as long as this page stays open. Each step
        is saved on this device.
      </p>
    </>
  );
}
