import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { csvOf, longCsv, wideCsv } from '../../../app/api/export/book-csv';
import { streamOf } from '../../../app/api/export/stream-of';
import { bookLearners, bookRows, bookWorks } from '../../../lib/store/book/mark-book';
import { ownDatabase, readyStore } from '../../store/databases';
import { AWKWARD, addLearner, sampleBook, wholeOf } from './samples';

/** Reads strictly: every record has as many fields as the head. */
function rowsOf(csv: string): Record<string, string>[] {
  return parse(csv, { bom: true, columns: true, record_delimiter: '\r\n' });
}

async function openBook() {
  const store = await readyStore(await ownDatabase('sqlite'));
  return { store, ...(await sampleBook(store)) };
}

describe('one row a learner', () => {
  test('the marks of the mark book, NA where nothing was handed in or marked', async () => {
    const { store, group } = await openBook();
    const works = await bookWorks(store.db, group);
    const rows = rowsOf(await wholeOf(wideCsv(store.db, group, works)));
    const book = await bookRows(
      store.db,
      await bookLearners(store.db, group, { by: 'name', find: '', without: '' }),
    );
    expect(rows.map(({ learner }) => learner)).toEqual([
      'Amal Brook',
      'Bera Stone',
      'Cal Ridge',
      'Zed Empty',
    ]);
    expect(rows.map((row) => row.Joints)).toEqual([
      '90',
      ...book
        .slice(1, 3)
        .map(({ cells }) => String(Math.round((cells.get(works[0]?.id ?? '')?.score ?? 0) * 1000) / 10)),
      'NA',
    ]);
    expect(rows.map((row) => row['Line, level']).slice(2)).toEqual(['NA', 'NA']);
  });

  // RFC 4180: records end with CRLF; fields with commas, quotes or line ends stand in quotes, quotes doubled.
  test('is CSV by RFC 4180, marked as UTF-8', async () => {
    const { store, group } = await openBook();
    const csv = await wholeOf(wideCsv(store.db, group, await bookWorks(store.db, group)));
    expect(csv.startsWith('\uFEFFlearner_ref,learner,Joints,"Line, level"\r\n')).toBe(true);
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(csv.endsWith('\r\n')).toBe(true);
  });
});

test('two works of one title can be told apart in the head', async () => {
  const { store, group } = await openBook();
  await store.db.updateTable('set_work').set({ title: 'Joints' }).execute();
  const works = await bookWorks(store.db, group);
  const [row] = rowsOf(await wholeOf(wideCsv(store.db, group, works)));
  expect(Object.keys(row ?? {}).slice(2)).toEqual(works.map(({ id }) => `Joints (${id})`));
});

describe('one row a hand-in', () => {
  test('every hand-in, with what was found; what was not asked is NA and not 0', async () => {
    const { store, group } = await openBook();
    const rows = rowsOf(await wholeOf(longCsv(store.db, group, await bookWorks(store.db, group))));
    expect(rows.map(({ learner, work, state }) => [learner, work, state])).toEqual([
      ['Amal Brook', 'Joints', 'marked'],
      ['Amal Brook', 'Line, level', 'marked'],
      ['Bera Stone', 'Joints', 'marked'],
      ['Bera Stone', 'Line, level', 'marked'],
      ['Cal Ridge', 'Joints', 'marked'],
      ['Cal Ridge', 'Line, level', 'marked'],
      ['Cal Ridge', 'Line, level', 'handed in'],
    ]);
    expect(rows[0]).toMatchObject({
      score: '0.9',
      overridden: '1',
      walls: '2',
      handed_in_at: '2026-01-07T08:00:00.000Z',
    });
    // Two walls at .9: middle 2.8 / 4 = .7, and .7 × .3 over one wall less, by hand.
    expect(Number(rows[0]?.standard_error)).toBeCloseTo(Math.sqrt(0.21), 12);
    expect(rows[0]?.measured_of).toMatch(/^(NA|\d+)$/);
    expect(rows[6]).toMatchObject({
      score: 'NA',
      standard_error: 'NA',
      found_got: 'NA',
      false_marks: 'NA',
      markings: '0',
    });
  });
});

describe('no cell runs as a formula', () => {
  test.each(AWKWARD.map((text) => [JSON.stringify(text), text] as const))('%s', (_, text) => {
    const [[cell = '', after] = []] = parse(csvOf([[text, 'after']]), {
      record_delimiter: '\r\n',
    }) as string[][];
    expect(cell).not.toMatch(/^[=+\-@\t\r\0]/);
    expect(cell.replace(/^'/, '')).toBe(text.replaceAll('\0', ''));
    expect(after).toBe('after');
  });

  test('a number below zero stays a number', () => {
    expect(csvOf([[-2, '-2']])).toBe("-2,'-2\r\n");
  });

  test('names and titles of a real file', async () => {
    const { store, group } = await openBook();
    for (const [i, name] of AWKWARD.entries()) await addLearner(store, group, name, 100 + i);
    await store.db.updateTable('set_work').set({ title: '=HYPERLINK("http://example.org")' }).execute();
    const csv = await wholeOf(wideCsv(store.db, group, await bookWorks(store.db, group)));
    const cells = (parse(csv, { bom: true, record_delimiter: '\r\n' }) as string[][]).flat();
    expect(cells.filter((cell) => /^[=+\-@\t\r\0]/.test(cell))).toEqual([]);
    expect(cells.length).toBe(4 * (1 + 4 + AWKWARD.length));
  });
});

describe('in constant memory', () => {
  test('a piece is made when the one before was taken', async () => {
    let made = 0;
    async function* pieces() {
      for (;;) {
        made += 1;
        yield 'x'.repeat(1000);
      }
    }
    const reader = streamOf(pieces()).getReader();
    await reader.read();
    await reader.read();
    expect(made).toBeLessThanOrEqual(4);
  });

  test('nothing more is read when the reader goes away', async () => {
    let ended = false;
    async function* pieces() {
      try {
        for (;;) yield 'x';
      } finally {
        ended = true;
      }
    }
    const reader = streamOf(pieces()).getReader();
    await reader.read();
    await reader.cancel();
    expect(ended).toBe(true);
  });
});
