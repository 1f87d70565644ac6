import type { Metadata } from 'next';
import { sizeOf } from '../lessons/draw-picture';
import styles from '../lessons/lessons.module.css';
import { GLOSSARY } from './glossary';
import { drawTerm, termFile } from './term-pictures';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Words of the trade',
  description:
    'What the words of masonry mean, with pictures, and what they are called in North America and in Britain.',
};

export default function GlossaryPage() {
  return (
    <div className="column">
      <h1>Words of the trade</h1>
      <p>
        The first name is the one used in North America. Where Britain says it in another way, that follows.
      </p>
      <div className={styles.terms}>
        {GLOSSARY.map(({ id, american, british, means, picture }) => {
          const svg = drawTerm(id);
          return (
            <section key={id} id={id} className={styles.entry}>
              <h2>{american}</h2>
              {american !== british && (
                <p className={styles.facts}>
                  In Britain: <strong>{british}</strong>
                </p>
              )}
              <p>{means}</p>
              {svg !== undefined && (
                // biome-ignore lint/performance/noImgElement: a drawing made at build time; there is nothing to resize
                <img
                  src={`/lessons/pictures/${termFile(id)}`}
                  alt={
                    picture === undefined
                      ? `Sketch: ${american}`
                      : `Drawing of a wall with a ${american} ringed`
                  }
                  loading="lazy"
                  {...sizeOf(svg)}
                />
              )}
            </section>
          );
        })}
      </div>
    </div>
  );
}
