import * as z from 'zod';
import { removeJoined } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';

const HOUR_MS = 60 * 60_000;
/** Takes off the roster all who typed themselves in within the last hour: somebody played with the group's code. */
export const POST = guarded('POST /api/groups/undo-joins', async ({ read, store, at, by }) => {
  const { group } = read(z.strictObject({ group: z.string() }));
  return { learners: await removeJoined(store, group, at - HOUR_MS, by) };
});
