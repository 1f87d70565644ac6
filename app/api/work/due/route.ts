import * as z from 'zod';
import { moveDue } from '../../../../lib/store/set-work';
import { RefusedChange } from '../../../../lib/store/store-problem';
import { guarded } from '../../../access/guard';
import { wrongField } from '../../../request/refusal';
import { timeIn, zone } from '../../../set-work/work-fields';

const NO_DATE = 'Choose the day and the time it is due.';
const fields = z.strictObject({
  work: z.string(),
  dueAt: z.string({ error: NO_DATE }).trim().min(1, NO_DATE),
  zone,
});

/** Gives set work another due date. */
export const POST = guarded('POST /api/work/due', async ({ read, store, by }) => {
  const { work, ...typed } = read(fields);
  const dueAt = timeIn('dueAt', typed.dueAt, typed.zone);
  if (dueAt === null) throw wrongField('dueAt', NO_DATE);
  try {
    await moveDue(store, work, dueAt, by);
  } catch (error) {
    if (!(error instanceof RefusedChange)) throw error;
    throw wrongField('dueAt', error.message);
  }
});
