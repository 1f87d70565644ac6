import * as z from 'zod';
import { moveWork } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ work: z.string() });

/** Sets a draft: from now on its learners see it. */
export const POST = guarded('POST /api/work/set', async ({ person, body, store, at }) => {
  const { work } = parseFields(fields, body);
  await moveWork(store, work, 'set', { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
