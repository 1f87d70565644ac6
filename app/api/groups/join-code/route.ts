import * as z from 'zod';
import { changeJoinCode } from '../../../../lib/store/groups/groups';
import { guarded } from '../../../access/guard';
import { makeJoinCode } from '../../../accounts/codes';

/** Gives a group a new code; the old one opens nothing any more. Who is signed in stays so. */
export const POST = guarded('POST /api/groups/join-code', async ({ read, store, by }) => {
  const { group } = read(z.strictObject({ group: z.string() }));
  await changeJoinCode(store, group, makeJoinCode(), by);
});
