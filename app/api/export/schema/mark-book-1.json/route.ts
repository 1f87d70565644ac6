import { guarded } from '../../../../access/guard';
import { BOOK_SCHEMA } from '../../book-schema';

/** The JSON Schema of the mark book export. What was published under this address stays; a change gets the next number. */
export const GET = guarded('GET /api/export/schema/mark-book-1.json', async () =>
  Response.json(BOOK_SCHEMA, {
    headers: { 'content-type': 'application/schema+json', 'cache-control': 'public, max-age=86400' },
  }),
);
