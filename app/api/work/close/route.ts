import * as z from 'zod';
import { moveWork } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';

/** Closes set work: no attempt begins any more. What was begun may still be handed in. */
export const POST = guarded('POST /api/work/close', async ({ read, store, by }) => {
  const { work } = read(z.strictObject({ work: z.string() }));
  await moveWork(store, work, 'closed', by);
});
