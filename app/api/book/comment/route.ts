import { randomUUID } from 'node:crypto';
import { addComment } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { commentFields } from '../book-fields';

/** A comment on a hand-in; the learner sees it with the result. */
export const POST = guarded('POST /api/book/comment', async ({ read, store, by }) => {
  await addComment(store, { id: randomUUID(), ...read(commentFields) }, by);
});
