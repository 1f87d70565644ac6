'use client';

import { useState } from 'react';
import { PostForm } from '../ui/post-form';
import styles from './make-link.module.css';

/** Ends a learner's PIN, or keeps a name without one for its owner. The one-time word is shown once; the site keeps only its hash. */
export function ResetPin(props: {
  readonly learner: string;
  readonly name: string;
  readonly hasPin: boolean;
}) {
  const { learner, name, hasPin } = props;
  const [word, setWord] = useState<string>();
  return (
    <>
      <PostForm
        action="/api/people/reset-pin"
        send={hasPin ? 'Reset PIN' : 'Give out a one-time word'}
        name={`New PIN for ${name}`}
        also={{ learner }}
        done="The word is below."
        onAnswer={(answer) => setWord(String(answer.word))}
        plain
      />
      {word && (
        <section className={styles.card} aria-label={`One-time word for ${name}`}>
          <p className={styles.link}>{word}</p>
          <p>
            Give this word to <strong>{name}</strong> and nobody else. They type it once, with a new PIN, when
            they next join. You see it only now; if it is lost, make another.
          </p>
        </section>
      )}
    </>
  );
}
