import * as z from 'zod';
import { audited } from '../../../../lib/store/audit';
import { eraseLearner } from '../../../../lib/store/learners';
import { guarded } from '../../../access/guard';
import { answerWith, endSessions } from '../../../accounts/sessions';

const fields = z.strictObject({
  sure: z.literal(true, { error: 'Tick the box if you are sure.' }),
});

/** Name, PIN, attempts, marks and results are gone for good; that work was handed in is left as a line for the instructor. The audit trail keeps an id that leads nowhere. */
export const POST = guarded(
  'POST /api/join/delete-my-data',
  async ({ request: { headers }, person, read, store, by }) => {
    read(fields);
    const cookies = await endSessions(headers);
    await audited(store, by, async (trx, note) => {
      await eraseLearner(trx, person.learnerId, by.at);
      await note('deleted their data', by.actor);
    });
    return answerWith({ ok: true, go: '/join?deleted=yes' }, cookies);
  },
);
