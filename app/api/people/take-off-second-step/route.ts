import { dropSecondStep } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { logChange } from '../../../accounts/note-in-trail';
import { Refusal } from '../../../request/refusal';
import { staffMember } from '../staff-member';

/** For an instructor who has lost phone and recovery codes. The owner's own asks for the password, on their account page. */
export const POST = guarded('POST /api/people/take-off-second-step', async ({ person, body, store, at }) => {
  const { userId } = await staffMember(store, body);
  if (userId === person.userId) {
    throw new Refusal(409, 'This is your own account. Turn the second step off on your account page.');
  }
  const entry = { at, actor: `user ${person.userId}`, action: 'took the second step off' };
  await dropSecondStep(store, userId, entry);
  logChange({ ...entry, subject: `user ${userId}` });
  return Response.json({ ok: true });
});
