import Link from 'next/link';
import type { ReactNode } from 'react';
import styles from './lesson.module.css';

/** A word of the trade in a text: leads to its picture and its other names. */
export function TermLink({ id, children }: { readonly id: string; readonly children: ReactNode }) {
  return (
    <Link className={styles.term} href={`/glossary/${id}`} prefetch={false}>
      {children}
    </Link>
  );
}

/** Names a book or a code in a text. */
export function SourceLink({ id, title }: { readonly id: string; readonly title: string }) {
  return (
    <Link href={`/sources#${id}`} prefetch={false}>
      <cite className={styles.source}>{title}</cite>
    </Link>
  );
}

/** A warning inside a lesson: of masonry that could fall, or of what harms the one who works (`of="health"`). Leads on to what to do. */
export function LessonCaution({ of, children }: { readonly of?: string; readonly children: ReactNode }) {
  const isOfHealth = of === 'health';
  return (
    <div className="caution" role="note">
      <p className="caution-word">
        <span aria-hidden="true">⚠ </span>
        {isOfHealth ? 'Protect yourself' : 'Danger'}
      </p>
      {children}
      <p className={styles.safety}>
        {isOfHealth ? (
          <Link href="/lessons/working-safely" prefetch={false}>
            Working safely around masonry
          </Link>
        ) : (
          <Link href="/safety">If masonry looks loose</Link>
        )}
      </p>
    </div>
  );
}
