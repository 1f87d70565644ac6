import type { Metadata } from 'next';
import Link from 'next/link';
import { GLOSSARY } from './glossary';
import styles from './glossary.module.css';
import { TermEntry } from './term-entry';

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
        {GLOSSARY.map((entry) => (
          <section key={entry.id} id={entry.id} className={`${styles.entry} target`}>
            <h2>
              <Link href={`/glossary/${entry.id}`} prefetch={false}>
                {entry.american}
              </Link>
            </h2>
            <TermEntry entry={entry} />
          </section>
        ))}
      </div>
    </div>
  );
}
