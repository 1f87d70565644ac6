import type { ReactNode } from 'react';
import styles from './limit-tables.module.css';

/** A table that slides sideways where the screen is narrower than it; the keyboard can slide it too. */
export function TableFrame({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what slides has to be reached by key
    <section className={styles.frame} aria-label={name} tabIndex={0}>
      <table className={styles.table}>
        <caption className="visually-hidden">{name}</caption>
        {children}
      </table>
    </section>
  );
}
