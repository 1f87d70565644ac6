import type { Metadata } from 'next';
import Link from 'next/link';
import { Caution } from '../../components/ui/caution';
import { DRAWING_CAUTIONS } from '../../lib/inspect/make-safe';
import styles from './lessons.module.css';
import { readLessons } from './read-lessons';

export const dynamic = 'error';

const FOR = new Intl.ListFormat('en', { type: 'conjunction' });

export const metadata: Metadata = {
  title: 'Lessons',
  description:
    'Lessons on reading masonry: what good work looks like, how it is measured, and what goes wrong with it.',
};

export default async function LessonsPage() {
  const lessons = await readLessons();
  return (
    <div className="column">
      <h1>Lessons</h1>
      <p>
        Each lesson teaches one thing that a mason, an inspector or a homeowner should be able to see. It
        begins with a wall to look at and ends with a wall to read. Work through them in order, or pick the
        one you need today.
      </p>
      <ol className={styles.list}>
        {lessons.map(({ slug, meta, minutes }) => (
          <li key={slug}>
            <Link href={`/lessons/${slug}`} prefetch={false}>
              {meta.order}. {meta.title}
            </Link>
            <p>{meta.summary}</p>
            <p className="fine">
              About {minutes} minutes · for {FOR.format(meta.readers.map((reader) => `${reader}s`))}
            </p>
          </li>
        ))}
      </ol>
      <ul>
        <li>
          <Link href="/drawings" prefetch={false}>
            Interactive drawings: change one thing and see what follows
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
            Glossary: the words of the trade, with pictures
          </Link>
        </li>
        <li>
          <Link href="/sources" prefetch={false}>
            Sources: where every limit comes from
          </Link>
        </li>
      </ul>
      <Caution lines={DRAWING_CAUTIONS} toSafety />
    </div>
  );
}
