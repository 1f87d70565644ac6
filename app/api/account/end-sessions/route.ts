import * as z from 'zod';
import { endStaffSessions } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { log } from '../../../server/log';

const fields = z.strictObject({
  /** Left out: all but this one. */
  session: z.string().optional(),
});

/** Signs oneself out elsewhere. */
export const POST = guarded('POST /api/account/end-sessions', async ({ person, read, store, by }) => {
  const { session } = read(fields);
  const which = session === undefined ? { except: person.session.id } : { only: session };
  await endStaffSessions(store.db, person.userId, which);
  log.info({ actor: by.actor, subject: by.actor }, 'signed out elsewhere');
});
