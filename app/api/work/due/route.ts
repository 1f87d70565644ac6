import * as z from 'zod';
import { moveDue, WorkError } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';
import { parseFields, wrongField } from '../../../request/refusal';
import { timeIn, zone } from '../../../set-work/work-fields';

const NO_DATE = 'Choose the day and the time it is due.';
const fields = z.strictObject({
  work: z.string(),
  dueAt: z.string({ error: NO_DATE }).trim().min(1, NO_DATE),
  zone,
});

/** Gives set work another due date. */
export const POST = guarded('POST /api/work/due', async ({ person, body, store, at }) => {
  const read = parseFields(fields, body);
  const dueAt = timeIn('dueAt', read.dueAt, read.zone);
  if (dueAt === null) throw wrongField('dueAt', NO_DATE);
  try {
    await moveDue(store, read.work, dueAt, { actor: `user ${person.userId}`, at });
  } catch (error) {
    if (!(error instanceof WorkError)) throw error;
    throw wrongField('dueAt', error.message);
  }
  return Response.json({ ok: true });
});
