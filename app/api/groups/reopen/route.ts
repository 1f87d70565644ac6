import * as z from 'zod';
import { reopenGroup } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ group: z.string() });

/** Opens a closed group again, with its code, its roster and its work as they were. */
export const POST = guarded('POST /api/groups/reopen', async ({ person, body, store, at }) => {
  const { group } = parseFields(fields, body);
  await reopenGroup(store, group, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
