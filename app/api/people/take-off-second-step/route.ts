import { dropSecondStep } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { changeRights } from '../../../accounts/note-in-trail';
import { Refusal } from '../../../request/refusal';
import { staffMember } from '../staff-member';

/** For an instructor who has lost phone and recovery codes. The owner's own asks for the password, on their account page. */
export const POST = guarded('POST /api/people/take-off-second-step', async ({ person, body, store, by }) => {
  const { userId } = await staffMember(store, body);
  if (userId === person.userId) {
    throw new Refusal(409, 'This is your own account. Turn the second step off on your account page.');
  }
  await changeRights(store, by, async (trx, note) => {
    await dropSecondStep(trx, userId);
    return note('took the second step off', `user ${userId}`);
  });
});
