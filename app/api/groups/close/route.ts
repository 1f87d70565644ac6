import * as z from 'zod';
import { closeGroup } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';

/** Closes a group: nobody joins and nothing new is begun. What was handed in stays. */
export const POST = guarded('POST /api/groups/close', async ({ read, store, by }) => {
  const { group } = read(z.strictObject({ group: z.string() }));
  await closeGroup(store, group, by);
});
