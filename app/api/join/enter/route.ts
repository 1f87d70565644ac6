import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { tidyCode } from '../../../accounts/codes';
import { enterGroup } from '../../../accounts/enter-group';
import { personName } from '../../../accounts/password-rules';
import { answerWith, startLearner } from '../../../accounts/sessions';
import { wrongField } from '../../../request/refusal';

const PIN_WORDS = 'A PIN has 4 to 6 digits.';

const pin = z.string({ error: 'Type your PIN.' }).regex(/^\d{4,6}$/, PIN_WORDS);

const fields = z.strictObject({
  code: z.string({ error: 'Type the code of your group.' }).max(100).transform(tidyCode),
  /** A name of the roster by its id, or one typed. */
  who: z.union([z.strictObject({ id: z.string() }), z.strictObject({ name: personName })]),
  pin,
  /** The PIN once more, when it is the first. */
  again: z.string().optional(),
  word: z.string().max(100).transform(tidyCode).optional(),
});

/** Signs a learner in: with the PIN they have, or with the first one they choose. */
export const POST = guarded('POST /api/join/enter', async ({ request: { headers }, read, store, at }) => {
  const asked = read(fields);
  if (asked.again !== undefined && asked.again !== asked.pin) {
    throw wrongField('again', 'The two PINs are not the same. Type them again.');
  }
  const entered = await enterGroup({ ...asked, isFirst: asked.again !== undefined, store, headers, at });
  return answerWith({ ok: true, go: '/my-work' }, await startLearner(headers, entered, at));
});
