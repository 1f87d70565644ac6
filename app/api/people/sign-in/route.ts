import * as z from 'zod';
import { staffByEmail } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { emailAddress, typedPassword } from '../../../accounts/password-rules';
import { rateLimited } from '../../../accounts/rate-limit';
import { accountKey, answerSignedIn, startDeskSession } from '../../../accounts/sessions';
import { Refusal } from '../../../request/refusal';

const fields = z.strictObject({
  email: emailAddress,
  password: typedPassword,
  onward: z.string().optional(),
});

export const POST = guarded('POST /api/people/sign-in', async ({ request: { headers }, read, store, at }) => {
  const { email, password, onward } = read(fields);
  const known = await staffByEmail(store.db, email);
  const guess = { of: accountKey(email), subject: known ? `user ${known.userId}` : 'no account' };
  const signedIn = await rateLimited({ store, headers, kinds: ['account'], ...guess, at }, () =>
    startDeskSession(headers, { email, password }),
  );
  if (!signedIn) {
    throw new Refusal(
      401,
      'E-mail and password do not fit together. Try again, or ask the owner of this site for a new link.',
    );
  }
  return answerSignedIn(signedIn, onward);
});
