import * as z from 'zod';
import { setTakesNew } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ group: z.string(), takesNew: z.boolean() });

/** Whether the group's code lets in names that are not on the roster. Those that are sign in either way. */
export const POST = guarded('POST /api/groups/joining', async ({ person, body, store, at }) => {
  const { group, takesNew } = parseFields(fields, body);
  await setTakesNew(store, group, takesNew, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
