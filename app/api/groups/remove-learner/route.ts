import * as z from 'zod';
import { removeFromRoster } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ learner: z.string() });

/** Takes a learner off the roster. Their work stays; the same name brings them back. */
export const POST = guarded('POST /api/groups/remove-learner', async ({ person, body, store, at }) => {
  const { learner } = parseFields(fields, body);
  await removeFromRoster(store, learner, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
