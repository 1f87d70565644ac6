import type { ReactNode } from 'react';
import styles from './mark-book.module.css';

/** A table in a window of its own: its head and its first column stay in sight, and the keyboard can slide it. */
export function SheetTable({
  caption,
  head,
  children,
}: {
  readonly caption: string;
  /** The cells of the head row. */
  readonly head: ReactNode;
  readonly children: ReactNode;
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what slides has to be reached by key
    <section className={styles.frame} aria-label={caption} tabIndex={0}>
      <table className={styles.table}>
        <caption>{caption}</caption>
        <thead>
          <tr>{head}</tr>
        </thead>
        {children}
      </table>
    </section>
  );
}

/** The head of a column; `number` sets it over figures. */
export function Head({
  children,
  number = false,
}: {
  readonly children: ReactNode;
  readonly number?: boolean;
}) {
  return (
    <th scope="col" className={number ? styles.number : undefined}>
      {children}
    </th>
  );
}
