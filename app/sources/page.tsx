import type { Metadata } from 'next';
import Link from 'next/link';
import { SOURCES } from '../../lib/limits/bibliography';
import { ALL_LIMITS } from '../../lib/limits/limits';
import styles from '../glossary/glossary.module.css';
import { readLessons } from '../lessons/read-lessons';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Sources',
  description:
    'Every code, standard, note and book that a figure on this site is from, and how each was read.',
};

export default async function SourcesPage() {
  const lessons = await readLessons();
  return (
    <div className="column">
      <h1>Sources</h1>
      <p>
        Figures and facts are taken from these. The words are ours. We say how each one was read: a copy is
        not the sealed text. Look a figure up before you build.
      </p>
      <div className={styles.terms}>
        {SOURCES.map(({ key, title, publisher, read }) => {
          const count = ALL_LIMITS.filter(({ source }) => source === key).length;
          const used = lessons.filter(({ meta }) => meta.sources.includes(key));
          return (
            <section key={key} id={key} className={styles.entry}>
              <h2>{title}</h2>
              <p>
                {publisher}. {read}
              </p>
              {count > 0 && (
                <p className={styles.facts}>
                  Limits from it: {count}. See <Link href="/limits">the limits</Link>.
                </p>
              )}
              {used.length > 0 && (
                <p className={styles.facts}>
                  Lessons:{' '}
                  {used.map(({ slug, meta }, index) => (
                    <span key={slug}>
                      {index > 0 && ', '}
                      <Link href={`/lessons/${slug}`} prefetch={false}>
                        {meta.title}
                      </Link>
                    </span>
                  ))}
                </p>
              )}
            </section>
          );
        })}
      </div>
    </div>
  );
}
