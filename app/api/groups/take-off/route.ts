import * as z from 'zod';
import { takeOffRoster } from '../../../../lib/store/groups';
import { guarded } from '../../../access';
import { parseFields } from '../../../refusal';

const fields = z.strictObject({ learner: z.string() });

/** Takes a learner off the roster. Their work stays; the same name brings them back. */
export const POST = guarded('POST /api/groups/take-off', async ({ person, body, store, at }) => {
  const { learner } = parseFields(fields, body);
  await takeOffRoster(store, learner, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
