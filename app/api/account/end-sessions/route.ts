import * as z from 'zod';
import { endStaffSessions } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { logChange } from '../../../accounts/note-in-trail';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({
  /** Left out: all but this one. */
  session: z.string().optional(),
});

/** Signs oneself out elsewhere. */
export const POST = guarded('POST /api/account/end-sessions', async ({ person, body, store }) => {
  const { session } = parseFields(fields, body);
  const which = session === undefined ? { except: person.session.id } : { only: session };
  await endStaffSessions(store.db, person.userId, which);
  const actor = `user ${person.userId}`;
  logChange({ actor, action: 'signed out elsewhere', subject: actor });
  return Response.json({ ok: true });
});
