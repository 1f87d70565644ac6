import * as z from 'zod';
import { createGroup } from '../../../lib/store/groups/groups';
import { guarded } from '../../access/guard';
import { makeJoinCode } from '../../accounts/codes';
import { oneLine } from '../../request/one-line';

const NAME = 'Write a name for the group.';
const fields = z.strictObject({
  name: z
    .string({ error: NAME })
    .transform(oneLine)
    .pipe(z.string().min(1, NAME).max(60, 'Write at most 60 letters.')),
});

/** Makes a group with a code to join by, and leads on to it. */
export const POST = guarded('POST /api/groups', async ({ person, read, store, at }) => {
  const { name } = read(fields);
  const group = await createGroup(store, { name, joinCode: makeJoinCode(), userId: person.userId }, at);
  return { group, go: `/desk/groups/${group}` };
});
