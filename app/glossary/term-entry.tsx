import { sizeOfSvg } from '../../lib/drawing/svg-nodes';
import type { GlossaryEntry } from './glossary';
import styles from './glossary.module.css';
import { drawTerm, termFile } from './term-pictures';

/** What a word means, what Britain calls it, and its picture: under the word itself, as the list and its own page have it. */
export function TermEntry(props: { readonly entry: GlossaryEntry; readonly isFirst?: boolean }) {
  const { entry, isFirst = false } = props;
  const { id, american, british, means, shows } = entry;
  const svg = drawTerm(id);
  return (
    <>
      {american !== british && (
        <p className="fine">
          In Britain: <strong>{british}</strong>
        </p>
      )}
      <p>{means}</p>
      {svg !== undefined && (
        // biome-ignore lint/performance/noImgElement: a drawing made at build time; there is nothing to resize
        <img
          className={styles.picture}
          src={`/lessons/pictures/${termFile(id)}`}
          alt={shows}
          loading={isFirst ? 'eager' : 'lazy'}
          {...sizeOfSvg(svg)}
        />
      )}
    </>
  );
}
