import * as z from 'zod';
import { removeJoined } from '../../../../lib/store/groups/roster';
import { guarded } from '../../../access/guard';
import { parseFields } from '../../../request/refusal';

const HOUR_MS = 60 * 60_000;
const fields = z.strictObject({ group: z.string() });

/** Takes off the roster all who typed themselves in within the last hour: somebody played with the group's code. */
export const POST = guarded('POST /api/groups/undo-joins', async ({ person, body, store, at }) => {
  const { group } = parseFields(fields, body);
  const learners = await removeJoined(store, group, at - HOUR_MS, { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true, learners });
});
