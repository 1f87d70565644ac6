import * as z from 'zod';
import { endLearnerSessions } from '../../../../lib/store/learner-sessions';
import { clearPin } from '../../../../lib/store/learners';
import { forgetTries } from '../../../../lib/store/throttle';
import { guarded } from '../../../access/guard';
import { makeWord } from '../../../accounts/codes';
import { changeRights } from '../../../accounts/note-in-trail';
import { hashSecret } from '../../../accounts/passwords';

/** Ends a learner's PIN and sign-ins, and gives the one-time word with which they, and nobody else in the group, choose a new PIN. */
export const POST = guarded('POST /api/people/reset-pin', async ({ read, store, by }) => {
  const { learner } = read(z.strictObject({ learner: z.string() }));
  const word = makeWord();
  const wordHash = await hashSecret(word);
  await changeRights(store, by, async (trx, note) => {
    await clearPin(trx, learner, wordHash);
    await endLearnerSessions(trx, learner, by.at);
    await forgetTries(trx, ['pin', 'pinDay'], learner);
    return note('reset a PIN', `learner ${learner}`);
  });
  return { word };
});
