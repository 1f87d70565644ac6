import * as z from 'zod';
import { closeGroup } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ group: z.string() });

/** Closes a group: nobody joins and nothing new is begun. What was handed in stays. */
export const POST = guarded('POST /api/groups/close', async ({ person, body, store, at }) => {
  const { group } = parseFields(fields, body);
  await closeGroup(store, group, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
