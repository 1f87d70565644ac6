'use client';

import { useEffect, useState } from 'react';
import styles from './hand-in.module.css';
import { isAnswered, type Progress, progressOf } from './kept-answers';

const WORDS: Readonly<Record<Progress, string>> = {
  'not begun': '○ Not begun',
  begun: '◐ Begun, saved on this device',
  done: '✓ Done, saved on this device',
};

interface WallState {
  readonly place: number;
  readonly progress: Progress;
  readonly answered: boolean;
}

/** The walls of an attempt with how far each is, and the way to hand them in. Asks once more while a wall is not done. */
export function AttemptWalls(props: {
  readonly attempt: string;
  readonly walls: readonly { readonly place: number; readonly kind: string }[];
  readonly addressOf: (place: number) => string;
  /** To change a wall that is done. */
  readonly onChange: (place: number) => void;
  readonly onHandIn: () => void;
  /** How many of the walls are on this device; null where the site draws them. */
  readonly onDevice: number | null;
}) {
  const { attempt, walls, addressOf, onChange, onHandIn, onDevice } = props;
  const [states, setStates] = useState<readonly WallState[]>();
  const [asked, setAsked] = useState(false);
  // What is kept on the device is only known here.
  useEffect(() => {
    const look = () =>
      setStates(
        walls.map(({ place }) => ({
          place,
          progress: progressOf(attempt, place),
          answered: isAnswered(attempt, place),
        })),
      );
    look();
    // Another tab of the same work.
    window.addEventListener('storage', look);
    return () => window.removeEventListener('storage', look);
  }, [attempt, walls]);
  if (!states) return <p role="status">One moment …</p>;
  const open = states.filter(({ progress }) => progress !== 'done');
  return (
    <>
      <ol className={styles.walls}>
        {walls.map(({ place, kind }, index) => {
          const progress = states[index]?.progress ?? 'not begun';
          const isDone = progress === 'done';
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
                {WORDS[progress]}{' '}
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
      <p>
        Every wall needs an answer: a mark, or your word that it is sound. A wall without an answer scores
        nothing, even if it is sound.
      </p>
      {open.length > 0 && asked && <p role="alert">{openWords(open)}</p>}
      <div className={`${styles.steps} row`}>
        <button
          type="button"
          className={open.length > 0 ? 'button button-plain' : 'button'}
          onClick={() => (open.length > 0 && !asked ? setAsked(true) : onHandIn())}
        >
          {open.length > 0 && asked
            ? 'Hand in anyway'
            : `Hand in ${walls.length === 1 ? 'the wall' : `all ${walls.length} walls`}`}
        </button>
      </div>
      <p>
        Nothing is handed in yet. Each step is saved on this device.{' '}
        {onDevice === null
          ? 'The walls of this work are drawn by the site: looking and measuring need a network. What you have done stays without one.'
          : onDevice < walls.length
            ? `Stay on the network for a moment: ${onDevice} of ${walls.length} walls are on this device so far.`
            : 'You can go on without a network as long as this page stays open.'}
      </p>
    </>
  );
}

/** What handing in now means for the walls that are not done. */
function openWords(open: readonly WallState[]): string {
  const begun = open.filter(({ answered }) => answered).map(({ place }) => place);
  const unanswered = open.filter(({ answered }) => !answered).map(({ place }) => place);
  const sentences = [
    begun.length > 0
      ? `${wallsAre(begun)} not done: what you have not marked there counts as not found.`
      : '',
    unanswered.length > 0
      ? `${wallsAre(unanswered)} not answered: you have marked nothing there and not said that ${unanswered.length === 1 ? 'it is' : 'they are'} sound.`
      : '',
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

/** 'Wall 2 is', 'Walls 2, 3 and 5 are'. */
function wallsAre(places: readonly number[]): string {
  const last = places.at(-1);
  return places.length === 1 ? `Wall ${last} is` : `Walls ${places.slice(0, -1).join(', ')} and ${last} are`;
}
