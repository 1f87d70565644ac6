import * as z from 'zod';
import { setTakesNew } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';

/** Whether the group's code lets in names that are not on the roster. Those that are sign in either way. */
export const POST = guarded('POST /api/groups/joining', async ({ read, store, by }) => {
  const { group, takesNew } = read(z.strictObject({ group: z.string(), takesNew: z.boolean() }));
  await setTakesNew(store, group, takesNew, by);
});
