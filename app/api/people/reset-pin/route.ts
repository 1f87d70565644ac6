import * as z from 'zod';
import { appendAudit } from '../../../../lib/store/audit';
import { endLearnerSessions } from '../../../../lib/store/learner-sessions';
import { clearPin } from '../../../../lib/store/learners';
import { forgetTries } from '../../../../lib/store/throttle';
import { guarded } from '../../../access/guard';
import { logChange } from '../../../accounts/note-in-trail';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ learner: z.string() });

/** The learner chooses a new PIN when they next sign in; until then whoever has the group's code can, so do it when they are there. */
export const POST = guarded('POST /api/people/reset-pin', async ({ person, body, store, at }) => {
  const { learner } = parseFields(fields, body);
  const entry = {
    at,
    actor: `user ${person.userId}`,
    action: 'reset a PIN',
    subject: `learner ${learner}`,
    detail: {},
  };
  await store.db.transaction().execute(async (trx) => {
    await clearPin(trx, learner);
    await endLearnerSessions(trx, learner, at);
    await forgetTries(trx, ['pin', 'pinDay'], learner);
    await appendAudit(trx, store.kind, entry);
  });
  logChange(entry);
  return Response.json({ ok: true });
});
