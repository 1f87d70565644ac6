import * as z from 'zod';
import { deleteDraft, WorkError, workOf } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields, Refusal } from '../../../request/refusal';

const fields = z.strictObject({ work: z.string() });

/** Deletes a draft, which no learner has seen, and leads back to its group. */
export const POST = guarded('POST /api/work/delete-draft', async ({ person, body, store, at }) => {
  const { work } = parseFields(fields, body);
  const { groupId } = await workOf(store, work);
  try {
    await deleteDraft(store, work, { actor: `user ${person.userId}`, at });
  } catch (error) {
    if (error instanceof WorkError) throw new Refusal(409, error.message);
    throw error;
  }
  return Response.json({ ok: true, go: `/desk/groups/${groupId}` });
});
