import { randomUUID } from 'node:crypto';
import { addComment } from '../../../../lib/store/book/book-changes';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';
import { byStaff, commentFields } from '../book-fields';
import { refusingBookErrors } from '../refuse';

/** A comment on a hand-in; the learner sees it with the result. */
export const POST = guarded('POST /api/book/comment', async ({ person, body, store, at }) => {
  const fields = parseFields(commentFields, body);
  await refusingBookErrors(addComment(store, { id: randomUUID(), ...fields }, byStaff(person, at)));
  return Response.json({ ok: true });
});
