import type { Metadata } from 'next';
import Link from 'next/link';
import { Caution } from '../../components/ui/caution';
import { DRAWING_CAUTIONS } from '../../lib/inspect/make-safe';
import styles from './lessons.module.css';
import { readLessons } from './read-lessons';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Lessons',
  description: 'Short lessons on reading masonry: what good looks like, how it is measured, what goes wrong.',
};

export default async function LessonsPage() {
  const lessons = await readLessons();
  return (
    <div className="column">
      <h1>Lessons</h1>
      <p>
        Each lesson teaches one thing that a mason, an inspector or a homeowner must see. It starts with a
        wall and ends with a wall. Take them in order, or take the one you need.
      </p>
      <ol className={styles.list}>
        {lessons.map(({ slug, meta }) => (
          <li key={slug}>
            <Link href={`/lessons/${slug}`} prefetch={false}>
              {meta.order}. {meta.title}
            </Link>
            <p>{meta.summary}</p>
            <p className="fine">
              {meta.minutes} minutes · for the {meta.readers.join(', the ')}
            </p>
          </li>
        ))}
      </ol>
      <ul>
        <li>
          <Link href="/drawings" prefetch={false}>
            Drawings that compute: change a thing and see what follows
          </Link>
        </li>
        <li>
          <Link href="/instruments" prefetch={false}>
            Instruments: what each one reads, and how it can mislead you
          </Link>
        </li>
        <li>
          <Link href="/questions" prefetch={false}>
            Questions on each topic
          </Link>
        </li>
        <li>
          <Link href="/glossary" prefetch={false}>
            Words of the trade, with pictures
          </Link>
        </li>
        <li>
          <Link href="/sources" prefetch={false}>
            Sources
          </Link>
        </li>
      </ul>
      <Caution lines={DRAWING_CAUTIONS} toSafety />
    </div>
  );
}
