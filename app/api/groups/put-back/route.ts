import * as z from 'zod';
import { putBack } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';

/** Puts a learner back on the roster they were taken off, with all they had. */
export const POST = guarded('POST /api/groups/put-back', async ({ read, store, by }) => {
  const { learner } = read(z.strictObject({ learner: z.string() }));
  await putBack(store, learner, by);
});
