import type { Source } from '../../lib/limits/limit';
import styles from './source-list.module.css';

/** Books, codes and notes, with how each was read. */
export function SourceList({ sources }: { readonly sources: readonly Source[] }) {
  return (
    <ul className={styles.list}>
      {sources.map(({ key, title, publisher, read, newer }) => (
        <li key={key}>
          <cite className={styles.title}>{title}</cite>. {publisher}.{' '}
          <span className={styles.read}>
            {read}
            {newer !== undefined && ` A newer edition is out, and was not read: ${newer}.`}
          </span>
        </li>
      ))}
    </ul>
  );
}
