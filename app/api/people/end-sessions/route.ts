import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { staffMember } from '../staff-member';

/** Signs somebody out everywhere: a phone was lost, or they have left. */
export const POST = guarded('POST /api/people/end-sessions', async ({ body, store, by }) => {
  const { userId } = await staffMember(store, body);
  await (await (await accounts()).$context).internalAdapter.deleteUserSessions(userId);
  await noteInTrail(store, by, 'signed out everywhere', `user ${userId}`);
});
