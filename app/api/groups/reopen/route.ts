import * as z from 'zod';
import { reopenGroup } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';

/** Opens a closed group again, with its code, its roster and its work as they were. */
export const POST = guarded('POST /api/groups/reopen', async ({ read, store, by }) => {
  const { group } = read(z.strictObject({ group: z.string() }));
  await reopenGroup(store, group, by);
});
