import * as z from 'zod';
import { appendAudit } from '../../../../lib/store/audit';
import { eraseLearner } from '../../../../lib/store/learners';
import { guarded } from '../../../access/guard';
import { answerWith, endSessions } from '../../../accounts/sessions';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({
  sure: z.literal(true, { error: 'Tick the box if you are sure.' }),
});

/** Name, PIN, attempts, marks and results are gone for good; that work was handed in is left as a line for the instructor. The audit trail keeps an id that leads nowhere. */
export const POST = guarded(
  'POST /api/join/delete-my-data',
  async ({ request: { headers }, person, body, store, at }) => {
    parseFields(fields, body);
    const { learnerId } = person;
    const cookies = await endSessions(headers);
    await store.db.transaction().execute(async (trx) => {
      await eraseLearner(trx, learnerId, at);
      await appendAudit(trx, store.kind, {
        at,
        actor: `learner ${learnerId}`,
        action: 'deleted their data',
        subject: `learner ${learnerId}`,
        detail: {},
      });
    });
    return answerWith({ ok: true, go: '/join?deleted=yes' }, cookies);
  },
);
