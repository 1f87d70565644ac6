import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { shutOut } from '../../../accounts/password-links';
import { Refusal } from '../../../request/refusal';
import { staffMember } from '../staff-member';

/** Somebody who has left signs in no more. Their name stays at what they did; a new link lets them in again. */
export const POST = guarded('POST /api/people/close-account', async ({ person, body, store, by }) => {
  const { userId } = await staffMember(store, body);
  if (userId === person.userId) {
    throw new Refusal(409, 'This is your own account. The owner cannot be shut out.');
  }
  await shutOut(userId);
  await noteInTrail(store, by, 'shut out', `user ${userId}`);
});
