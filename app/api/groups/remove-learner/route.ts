import * as z from 'zod';
import { removeFromRoster } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';

/** Takes a learner off the roster. Their work stays; the same name brings them back. */
export const POST = guarded('POST /api/groups/remove-learner', async ({ read, store, by }) => {
  const { learner } = read(z.strictObject({ learner: z.string() }));
  await removeFromRoster(store, learner, by);
});
