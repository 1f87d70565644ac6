import * as z from 'zod';
import { addCoInstructor, removeCoInstructor, staffByEmail } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { changeRights } from '../../../accounts/note-in-trail';
import { emailAddress } from '../../../accounts/password-rules';
import { wrongField } from '../../../request/refusal';

const fields = z.strictObject({
  group: z.string(),
  email: emailAddress,
  part: z.enum(['co', 'none']),
});

/** Makes somebody a co-instructor of a group, or takes that away. */
export const POST = guarded('POST /api/people/co-instructor', async ({ read, store, by }) => {
  const { group, email, part } = read(fields);
  const member = await staffByEmail(store.db, email);
  if (!member) {
    throw wrongField(
      'email',
      'Nobody with this e-mail can sign in here yet. Ask the owner of this site to invite them.',
    );
  }
  await changeRights(store, by, async (trx, note) => {
    if (part === 'co') await addCoInstructor(trx, group, member.userId);
    else await removeCoInstructor(trx, group, member.userId);
    const action = part === 'co' ? 'made co-instructor' : 'no longer co-instructor';
    return note(action, `user ${member.userId}`, { group });
  });
});
