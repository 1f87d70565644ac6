import * as z from 'zod';
import { changeJoinCode } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';
import { makeJoinCode } from '../../../accounts/codes';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ group: z.string() });

/** Gives a group a new code; the old one opens nothing any more. Who is signed in stays so. */
export const POST = guarded('POST /api/groups/join-code', async ({ person, body, store, at }) => {
  const { group } = parseFields(fields, body);
  await changeJoinCode(store, group, makeJoinCode(), { actor: `user ${person.userId}`, at });
  return Response.json({ ok: true });
});
