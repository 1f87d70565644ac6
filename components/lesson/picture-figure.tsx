'use client';

import type { ReactNode } from 'react';
import type { LengthSystem } from '../../lib/units';
import { useLengthsHere } from '../forms/rules-in-use';
import styles from './lesson.module.css';

export interface FigurePicture {
  readonly src: string;
  /** The same drawing with its lengths in inches, where it has any. */
  readonly srcInInches: string | undefined;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly keyed: readonly string[];
  /** Addresses of the drawing in words, part by part, for one that is to be judged. */
  readonly words?: Readonly<Record<LengthSystem, string>> | undefined;
}

/** A drawing with what is said below it, and the key to its numbered rings. Its lengths are the reader's. */
export function PictureFigure(props: FigurePicture & { readonly children?: ReactNode }) {
  const { src, srcInInches, alt, width, height, keyed, words, children } = props;
  const system = useLengthsHere();
  const shown = system === 'inches' ? (srcInInches ?? src) : src;
  return (
    <figure className={styles.figure}>
      <a href={shown} className={styles.large}>
        {/* biome-ignore lint/performance/noImgElement: a drawing made at build time; there is nothing to resize */}
        <img src={shown} alt={alt} width={width} height={height} loading="lazy" />
        <span className={styles.open}>Open this drawing on its own</span>
      </a>
      <figcaption>
        {children}
        {words && (
          <a className={styles.words} href={words[system]}>
            In words
            <span className="visually-hidden">: {alt}</span>
          </a>
        )}
        {keyed.length > 0 && (
          <ol className={styles.key}>
            {keyed.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ol>
        )}
      </figcaption>
    </figure>
  );
}
