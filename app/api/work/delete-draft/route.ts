import * as z from 'zod';
import { deleteDraft, workOf } from '../../../../lib/store/set-work';
import { guarded } from '../../../access/guard';

/** Deletes a draft, which no learner has seen, and leads back to its group. */
export const POST = guarded('POST /api/work/delete-draft', async ({ read, store, by }) => {
  const { work } = read(z.strictObject({ work: z.string() }));
  const { groupId } = await workOf(store, work);
  await deleteDraft(store, work, by);
  return { go: `/desk/groups/${groupId}` };
});
