import * as z from 'zod';
import { putBack, RosterError } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';
import { parseFields, Refusal } from '../../../request/refusal';

const fields = z.strictObject({ learner: z.string() });

/** Puts a learner back on the roster they were taken off, with all they had. */
export const POST = guarded('POST /api/groups/put-back', async ({ person, body, store, at }) => {
  const { learner } = parseFields(fields, body);
  try {
    await putBack(store, learner, { actor: `user ${person.userId}`, at });
  } catch (error) {
    if (error instanceof RosterError) throw new Refusal(409, error.message);
    throw error;
  }
  return Response.json({ ok: true });
});
