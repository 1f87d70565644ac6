import * as z from 'zod';
import { staffByEmail } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { emailAddress, typedPassword } from '../../../accounts/password-rules';
import { rateLimited } from '../../../accounts/rate-limit';
import { accountKey, answerWith, startDeskSession } from '../../../accounts/sessions';
import { parseFields, Refusal } from '../../../request/refusal';

const fields = z.strictObject({
  email: emailAddress,
  password: typedPassword,
  // Where they wanted to go. A page of the desk only: nobody is sent to another site from here.
  onward: z.string().optional(),
});

export const POST = guarded('POST /api/people/sign-in', async ({ request: { headers }, body, store, at }) => {
  const { email, password, onward } = parseFields(fields, body);
  const known = await staffByEmail(store.db, email);
  const guess = { of: accountKey(email), subject: known ? `user ${known.userId}` : 'no account' };
  const cookies = await rateLimited({ store, headers, kinds: ['account'], ...guess, at }, () =>
    startDeskSession(headers, { email, password }),
  );
  if (!cookies) {
    throw new Refusal(
      401,
      'E-mail and password do not fit together. Try again, or ask the owner of this site for a new link.',
    );
  }
  return answerWith(
    { ok: true, go: onward && /^\/desk(\/[\w/-]*)?$/.test(onward) ? onward : '/desk' },
    cookies,
  );
});
