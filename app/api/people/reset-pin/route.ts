import * as z from 'zod';
import { appendAudit } from '../../../../lib/store/audit';
import { endLearnerSessions } from '../../../../lib/store/learner-sessions';
import { clearPin } from '../../../../lib/store/learners';
import { forgetTries } from '../../../../lib/store/throttle';
import { guarded } from '../../../access/guard';
import { makeWord } from '../../../accounts/codes';
import { logChange } from '../../../accounts/note-in-trail';
import { hashSecret } from '../../../accounts/passwords';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ learner: z.string() });

/** Ends a learner's PIN and sign-ins, and gives the one-time word with which they, and nobody else in the group, choose a new PIN. */
export const POST = guarded('POST /api/people/reset-pin', async ({ person, body, store, at }) => {
  const { learner } = parseFields(fields, body);
  const word = makeWord();
  const wordHash = await hashSecret(word);
  const entry = {
    at,
    actor: `user ${person.userId}`,
    action: 'reset a PIN',
    subject: `learner ${learner}`,
    detail: {},
  };
  await store.db.transaction().execute(async (trx) => {
    await clearPin(trx, learner, wordHash);
    await endLearnerSessions(trx, learner, at);
    await forgetTries(trx, ['pin', 'pinDay'], learner);
    await appendAudit(trx, store.kind, entry);
  });
  logChange(entry);
  return Response.json({ ok: true, word });
});
