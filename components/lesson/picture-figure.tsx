import type { ReactNode } from 'react';
import styles from './lesson.module.css';

/** A drawing with what is said below it, and the key to its numbered rings. */
export function PictureFigure(props: {
  readonly src: string;
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly keyed: readonly string[];
  /** What the lengths in the drawing are in inches: it is drawn once, in mm. */
  readonly inInches: readonly string[];
  readonly children?: ReactNode;
}) {
  const { src, alt, width, height, keyed, inInches, children } = props;
  return (
    <figure className={styles.figure}>
      <a href={src} className={styles.large}>
        {/* biome-ignore lint/performance/noImgElement: a drawing made at build time; there is nothing to resize */}
        <img src={src} alt={alt} width={width} height={height} />
        <span className={styles.open}>Open the drawing alone</span>
      </a>
      <figcaption>
        {children}
        {inInches.length > 0 && <p className={styles.inches}>In inches: {inInches.join('; ')}.</p>}
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
