import { guarded } from '../../../../access/guard';
import { RECORD_SCHEMA } from '../../record-schema';

/** The JSON Schema of a practice record. What was published under this address stays; a change gets the next number. */
export const GET = guarded('GET /practise/record/schema/practice-record-1.json', async () =>
  Response.json(RECORD_SCHEMA, {
    headers: { 'content-type': 'application/schema+json', 'cache-control': 'public, max-age=86400' },
  }),
);
