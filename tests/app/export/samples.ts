import { overrideMark } from '../../../lib/store/book/book-changes';
import type { Store } from '../../../lib/store/database';
import { INVENTED_LEARNERS, inventGroup } from '../../store/samples/invented-group';
import { type InventedGroup, inventedId, MONDAY } from '../../store/samples/invented-hand-ins';
import { openAttempt } from '../../store/samples/sample-attempt';

/** Names and titles that a spreadsheet program would run, or that break a line of CSV. */
export const AWKWARD = [
  '=1+1',
  '+1',
  '-1',
  '@SUM(A1)',
  '\t=1',
  '\0=1',
  'Ö, "Åsa"',
  'two\r\nlines',
  'one\nline',
] as const;

/** Two works of two walls by three learners: one mark overridden, one second try open, one not marked yet, and one learner with nothing. */
export async function sampleBook(store: Store): Promise<InventedGroup> {
  const book = await inventGroup(store, {
    name: 'Tuesday; "evening"',
    number: 1,
    learners: INVENTED_LEARNERS.slice(0, 3),
    works: [
      { title: 'Joints', topics: ['joints'], walls: 2, difficulty: 1, sameForAll: true },
      { title: 'Line, level', topics: ['line'], walls: 2, difficulty: 2, sameForAll: false },
    ],
  });
  const [first = []] = book.attempts;
  await overrideMark(
    store,
    { id: inventedId(30, 1), attempt: first[0] ?? '', score: 0.9, reason: 'The light was out' },
    { actor: 'user u1', at: MONDAY },
  );
  const open = await openAttempt(store, book.works[0] ?? '', book.learners[1] ?? '', 2);
  await store.db.updateTable('attempt').set({ started_at: MONDAY }).where('id', '=', open).execute();
  const waiting = await openAttempt(store, book.works[1] ?? '', book.learners[2] ?? '', 2);
  await store.db
    .updateTable('attempt')
    .set({ state: 'handed in', handed_in_at: MONDAY })
    .where('id', '=', waiting)
    .execute();
  await addLearner(store, book.group, 'Zed Empty', 1);
  return book;
}

export async function addLearner({ db }: Store, group: string, name: string, number: number): Promise<void> {
  await db
    .insertInto('learner')
    .values({
      id: inventedId(31, number),
      group_id: group,
      name,
      pin_hash: null,
      time_factor: 100,
      created_at: MONDAY,
      removed_at: null,
    })
    .execute();
}

export async function wholeOf(pieces: AsyncIterable<string>): Promise<string> {
  let text = '';
  for await (const piece of pieces) text += piece;
  return text;
}
