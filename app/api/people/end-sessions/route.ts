import { appendAudit } from '../../../../lib/store/audit';
import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { staffMember } from '../staff-member';

/** Signs somebody out everywhere: a phone was lost, or they have left. */
export const POST = guarded('POST /api/people/end-sessions', async ({ person, body, store, at }) => {
  const { userId } = await staffMember(store, body);
  await (await (await accounts()).$context).internalAdapter.deleteUserSessions(userId);
  await store.db.transaction().execute((trx) =>
    appendAudit(trx, store.kind, {
      at,
      actor: `user ${person.userId}`,
      action: 'signed out everywhere',
      subject: `user ${userId}`,
      detail: {},
    }),
  );
  return Response.json({ ok: true });
});
