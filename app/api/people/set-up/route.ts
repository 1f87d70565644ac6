import * as z from 'zod';
import { hasOwner } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { tidyCode } from '../../../accounts/codes';
import { makeStaff } from '../../../accounts/new-staff';
import { setPassword } from '../../../accounts/password-links';
import { emailAddress, newPassword, personName, refuseOwnWords } from '../../../accounts/password-rules';
import { rateLimited } from '../../../accounts/rate-limit';
import { answerSignedIn, startDeskSession } from '../../../accounts/sessions';
import { useStartCode } from '../../../accounts/start-code';
import { Refusal, wrongField } from '../../../request/refusal';

const fields = z.strictObject({
  code: z
    .string({ error: 'Type the code.' })
    .min(1, 'Type the code.')
    .max(100, 'The code is shorter.')
    .transform(tidyCode),
  name: personName,
  email: emailAddress,
  password: newPassword,
});

/** Makes the owner's account, for whoever read the start code. */
export const POST = guarded('POST /api/people/set-up', async ({ request: { headers }, read, store, at }) => {
  // All fields first: a code is used up only by a form that is complete.
  const { code, name, email, password } = read(fields);
  refuseOwnWords(password, { name, email });
  if (await hasOwner(store.db)) throw new Refusal(409, 'This site has its owner already. Sign in instead.');
  const right = await rateLimited(
    { store, headers, kinds: ['startCode'], of: 'site', subject: 'start code', at },
    async () => (await useStartCode(code)) || undefined,
  );
  if (!right) {
    throw wrongField('code', 'This code is not right, or it is too old. Start the site again for a new one.');
  }
  const userId = await makeStaff({ name, email, role: 'owner', at });
  await setPassword(userId, password);
  const signedIn = await startDeskSession(headers, { email, password });
  return answerSignedIn(signedIn ?? { cookies: [], needsCode: false });
});
