import * as z from 'zod';
import { moveWork } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ work: z.string() });

/** Closes set work: no attempt begins any more. What was begun may still be handed in. */
export const POST = guarded('POST /api/work/close', async ({ person, body, store, at }) => {
  const { work } = parseFields(fields, body);
  await moveWork(store, work, 'closed', { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
