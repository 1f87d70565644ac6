import { groupName } from '../../../../../lib/store/book/book-heads';
import { bookWorks } from '../../../../../lib/store/book/mark-book';
import { guarded } from '../../../../access/guard';
import { Refusal } from '../../../../request/refusal';
import { longCsv, wideCsv } from '../../book-csv';
import { bookJson } from '../../book-json';
import { streamOf } from '../../stream-of';

/** The mark book as a file: one row a learner (wide.csv), one row a hand-in (long.csv), or everything (book.json). */
export const GET = guarded('GET /api/export/[group]/[file]', async ({ params, store, at }) => {
  const { group = '', file = '' } = params;
  const { db } = store;
  const name = await groupName(db, group);
  const works = await bookWorks(db, group);
  switch (file) {
    case 'wide.csv':
      return asFile(wideCsv(db, group, works), 'text/csv; charset=utf-8; header=present', `${name} wide.csv`);
    case 'long.csv':
      return asFile(longCsv(db, group, works), 'text/csv; charset=utf-8; header=present', `${name} long.csv`);
    case 'book.json':
      return asFile(
        bookJson(db, { id: group, name }, works, at),
        'application/json',
        `${name} mark book.json`,
      );
    default:
      throw new Refusal(404, 'There is no such file: ask for wide.csv, long.csv or book.json.');
  }
});

/** RFC 6266: a plain name for old programs, and the whole name in UTF-8. */
function asFile(pieces: AsyncIterable<string>, type: string, name: string): Response {
  const plain = name.replace(/[^A-Za-z0-9 .-]/g, '_');
  // Half a letter, as some programs leave behind, cannot be encoded.
  const whole = encodeURIComponent(name.replace(/\p{Surrogate}/gu, '_')).replace(
    /['()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );
  return new Response(streamOf(pieces), {
    headers: {
      'content-type': type,
      'content-disposition': `attachment; filename="${plain}"; filename*=UTF-8''${whole}`,
    },
  });
}
