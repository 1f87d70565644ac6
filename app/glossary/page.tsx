import type { Metadata } from 'next';
import { sizeOfSvg } from '../../lib/drawing/svg-nodes';
import { GLOSSARY } from './glossary';
import styles from './glossary.module.css';
import { wordsOn } from './sketches/sketches';
import { drawTerm, termFile } from './term-pictures';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Words of the trade',
  description:
    'What the words of masonry mean, with pictures, and what they are called in North America and in Britain.',
};

const FIRST_OF_LETTER = GLOSSARY.filter(
  ({ american }, index) => american.charAt(0) !== GLOSSARY[index - 1]?.american.charAt(0),
);

export default function GlossaryPage() {
  return (
    <div className="column">
      <h1>Words of the trade</h1>
      <p>
        The first name is the one used in North America. Where Britain says it in another way, that follows.
      </p>
      <nav aria-label="Words by first letter">
        <ul className={styles.letters}>
          {FIRST_OF_LETTER.map(({ id, american }) => (
            <li key={id}>
              <a href={`#${id}`}>{american.charAt(0).toUpperCase()}</a>
            </li>
          ))}
        </ul>
      </nav>
      <div className={styles.terms}>
        {GLOSSARY.map(({ id, american, british, means, picture }) => {
          const svg = drawTerm(id);
          return (
            <section key={id} id={id} className={`${styles.entry} target`}>
              <h2>{american}</h2>
              {american !== british && (
                <p className="fine">
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
                      ? `Drawing for ${american}. Pointed out: ${wordsOn(id).join(', ')}.`
                      : `Drawing of a wall with a ${american} ringed`
                  }
                  loading="lazy"
                  {...sizeOfSvg(svg)}
                />
              )}
            </section>
          );
        })}
      </div>
    </div>
  );
}
