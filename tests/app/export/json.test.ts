import { Ajv2020 } from 'ajv/dist/2020';
import { describe, expect, test } from 'vitest';
import { bookJson } from '../../../app/api/export/book-json';
import { BOOK_SCHEMA, BOOK_SCHEMA_PATH, type Book } from '../../../app/api/export/book-schema';
import { bookWorks } from '../../../lib/store/book/mark-book';
import { ownDatabase, readyStore } from '../../store/databases';
import { sampleBook, wholeOf } from './samples';

const validate = new Ajv2020({ strict: true, allErrors: true }).compile(BOOK_SCHEMA);

async function exportedBook(): Promise<Book> {
  const store = await readyStore(await ownDatabase('sqlite'));
  const { group } = await sampleBook(store);
  const works = await bookWorks(store.db, group);
  const text = await wholeOf(
    bookJson(store.db, { id: group, name: 'Tuesday; "evening"' }, works, Date.UTC(2026, 10, 25)),
  );
  return JSON.parse(text) as Book;
}

describe('the mark book as JSON', () => {
  test('keeps to its published schema', async () => {
    const book = await exportedBook();
    validate(book);
    expect(validate.errors).toBe(null);
    expect(book).toMatchObject({
      $schema: BOOK_SCHEMA_PATH,
      schemaVersion: 1,
      exportedAt: '2026-11-25T00:00:00.000Z',
      group: { name: 'Tuesday; "evening"' },
    });
    expect(BOOK_SCHEMA.$id).toBe('/api/export/schema/mark-book-1.json');
  });

  test('has every hand-in with its walls; an open try is none', async () => {
    const { learners, works } = await exportedBook();
    expect(learners.map(({ name, handIns }) => [name, handIns.length])).toEqual([
      ['Amal Brook', 2],
      ['Bera Stone', 2],
      ['Cal Ridge', 3],
      ['Zed Empty', 0],
    ]);
    expect(works.map(({ title, walls }) => [title, walls])).toEqual([
      ['Joints', 2],
      ['Line, level', 2],
    ]);
    expect(learners[0]?.handIns[0]).toMatchObject({ score: 0.9, overridden: true, markings: 1 });
    expect(learners[0]?.handIns[0]?.walls.map(({ place }) => place)).toEqual([1, 2]);
    expect(learners[2]?.handIns[2]).toMatchObject({
      state: 'handed in',
      score: null,
      standardError: null,
      walls: [],
    });
  });

  test.each<[string, (book: Book) => unknown]>([
    [
      'a score over 1',
      ({ learners, ...book }) => ({
        ...book,
        learners: learners.map((one) => ({
          ...one,
          handIns: one.handIns.map((each) => ({ ...each, score: 1.5 })),
        })),
      }),
    ],
    ['a field it does not know', (book) => ({ ...book, extra: 1 })],
    ['a moment without a zone', (book) => ({ ...book, exportedAt: '2026-11-25T00:00:00' })],
    ['another version', (book) => ({ ...book, schemaVersion: 2 })],
    ['no learners', ({ learners: _, ...book }) => book],
  ])('the schema refuses %s', async (_, spoil) => {
    expect(validate(spoil(await exportedBook()))).toBe(false);
  });

  test('a group without learners is whole too', async () => {
    const store = await readyStore(await ownDatabase('sqlite'));
    const text = await wholeOf(bookJson(store.db, { id: 'g', name: 'Empty' }, [], 0));
    expect(validate(JSON.parse(text))).toBe(true);
  });
});
