import type { Metadata } from 'next';
import { Suspense } from 'react';
import { groupName } from '../../../../../lib/store/book/book-heads';
import { bookRows, bookWorks, countLearners } from '../../../../../lib/store/book/mark-book';
import { requirePage } from '../../../../access/guard';
import { times } from '../../../book-numbers';
import styles from '../../../mark-book.module.css';
import { BookTable } from './book-table';
import { CalendarLink } from './calendar-link';
import { GroupFigures } from './group-figures';

export const metadata: Metadata = { title: 'Mark book' };

const PAGE = 50;

interface Props {
  readonly params: Promise<{ readonly group: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}

export default async function BookPage({ params, searchParams }: Props) {
  const { params: named, store } = await requirePage('/desk/groups/[group]/book', params);
  const { group = '' } = named;
  const { db } = store;
  const [name, works, learners] = await Promise.all([
    groupName(db, group),
    bookWorks(db, group),
    countLearners(db, group),
  ]);
  const pages = Math.max(1, Math.ceil(learners / PAGE));
  const page = pageOf((await searchParams).page, pages);
  const rows = await bookRows(db, group, { offset: (page - 1) * PAGE }, PAGE);
  const here = `/desk/groups/${group}/book`;
  return (
    <div className={styles.wide}>
      <p className={styles.back}>
        <a href={`/desk/groups/${group}`}>{name}</a>
      </p>
      <h1>Mark book: {name}</h1>
      {works.length === 0 ? (
        <p>Nothing is set yet. When learners hand work in, their marks show here.</p>
      ) : (
        <BookTable
          works={works}
          rows={rows}
          caption={`${times(learners, 'learner')}, ${times(works.length, 'set work')}`}
        />
      )}
      {pages > 1 && (
        <nav className={styles.pages} aria-label="Pages of learners">
          {page > 1 && <a href={`${here}?page=${page - 1}`}>Learners before</a>}
          <span>
            Page {page} of {pages}
          </span>
          {page < pages && <a href={`${here}?page=${page + 1}`}>Next learners</a>}
        </nav>
      )}
      {works.length > 0 && (
        <Suspense fallback={<p role="status">Working out what the group can see and what not …</p>}>
          <GroupFigures db={db} group={group} />
        </Suspense>
      )}
      <h2>Export</h2>
      <ul className={styles.links}>
        <li>
          <a href={`/api/export/${group}/wide.csv`}>Table, one row a learner (CSV)</a>
        </li>
        <li>
          <a href={`/api/export/${group}/long.csv`}>Every hand-in, one row each (CSV)</a>
        </li>
        <li>
          <a href={`/api/export/${group}/book.json`}>Everything (JSON)</a>
        </li>
      </ul>
      <CalendarLink group={group} />
    </div>
  );
}

function pageOf(text: string | string[] | undefined, pages: number): number {
  const page = typeof text === 'string' && /^\d{1,6}$/.test(text) ? Number(text) : 1;
  return Math.min(pages, Math.max(1, page));
}
