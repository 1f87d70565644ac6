import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { staffMember } from '../staff-member';

/** Signs somebody out everywhere: a phone was lost, or they have left. */
export const POST = guarded('POST /api/people/end-sessions', async ({ person, body, store, at }) => {
  const { userId } = await staffMember(store, body);
  await (await (await accounts()).$context).internalAdapter.deleteUserSessions(userId);
  await noteInTrail(store, {
    at,
    actor: `user ${person.userId}`,
    action: 'signed out everywhere',
    subject: `user ${userId}`,
  });
  return Response.json({ ok: true });
});
