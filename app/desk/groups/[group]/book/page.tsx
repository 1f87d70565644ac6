import type { Metadata } from 'next';
import { Suspense } from 'react';
import { SelectField, TextField } from '../../../../../components/ui/fields';
import { GetForm } from '../../../../../components/ui/get-form';
import { groupName } from '../../../../../lib/store/book/book-heads';
import {
  type BookOrder,
  type BookWork,
  bookLearners,
  bookRows,
  bookWorks,
} from '../../../../../lib/store/book/mark-book';
import { requirePage } from '../../../../access/require-page';
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
  const asked = await searchParams;
  const order = orderOf(asked);
  const [name, works, learners] = await Promise.all([
    groupName(db, group),
    bookWorks(db, group),
    bookLearners(db, group, order),
  ]);
  const pages = Math.max(1, Math.ceil(learners.length / PAGE));
  const page = pageOf(asked.page, pages);
  const rows = await bookRows(db, learners.slice((page - 1) * PAGE, page * PAGE));
  const here = `/desk/groups/${group}/book`;
  return (
    <div className={styles.wide}>
      <p className="links">
        <a href={`/desk/groups/${group}`}>{name}</a>
      </p>
      <h1>Mark book: {name}</h1>
      {works.length === 0 ? (
        <p>Nothing is set yet. When learners hand work in, their marks show here.</p>
      ) : (
        <>
          <Find here={here} works={works} order={order} />
          <BookTable
            works={works}
            rows={rows}
            caption={`${times(learners.length, 'learner')}, ${times(works.length, 'set work')}`}
          />
        </>
      )}
      {pages > 1 && (
        <nav className="bar" aria-label="Pages of learners">
          {Array.from({ length: pages }, (_, index) => index + 1).map((each) => (
            <a
              key={each}
              href={`${here}?${new URLSearchParams({ ...order, page: String(each) })}`}
              aria-current={each === page ? 'page' : undefined}
              aria-label={`Page ${each} of ${pages}`}
            >
              {each}
            </a>
          ))}
        </nav>
      )}
      {works.length > 0 && (
        <Suspense fallback={<p role="status">Working out what the group can see and what not …</p>}>
          <GroupFigures db={db} group={group} />
        </Suspense>
      )}
      <h2>Export</h2>
      <ul className="links">
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

type Asked = Awaited<Props['searchParams']>;

function orderOf({ by, find, without }: Asked): BookOrder {
  return {
    by: by === 'last name' ? by : 'name',
    find: typeof find === 'string' ? find : '',
    without: typeof without === 'string' ? without : '',
  };
}

function Find(props: {
  readonly here: string;
  readonly works: readonly BookWork[];
  readonly order: BookOrder;
}) {
  const { here, works, order } = props;
  return (
    <details className="disclosure" open={order.find !== '' || order.without !== ''}>
      <summary>Find and sort</summary>
      <GetForm action={here} send="Show" plain name="Find and sort">
        <TextField name="find" label="Name contains" value={order.find} most={60} />
        <SelectField
          name="by"
          label="Sort by"
          value={order.by}
          choices={[
            { value: 'name', label: 'First name' },
            { value: 'last name', label: 'Last name' },
          ]}
        />
        <SelectField
          name="without"
          label="Show"
          value={order.without}
          choices={[
            { value: '', label: 'Everybody' },
            ...works.map(({ id, title }) => ({ value: id, label: `Not handed in: ${title}` })),
          ]}
        />
      </GetForm>
    </details>
  );
}

function pageOf(text: string | string[] | undefined, pages: number): number {
  const page = typeof text === 'string' && /^\d{1,6}$/.test(text) ? Number(text) : 1;
  return Math.min(pages, Math.max(1, page));
}
