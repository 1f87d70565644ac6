import * as z from 'zod';
import { forgetTries } from '../../../../lib/store/throttle';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { holderOf, usePasswordLink } from '../../../accounts/password-links';
import { newPassword, refuseOwnWords } from '../../../accounts/password-rules';
import { accountKey, answerSignedIn, startDeskSession } from '../../../accounts/sessions';
import { parseFields, Refusal } from '../../../request/refusal';

const fields = z.strictObject({ token: z.string().max(100), password: newPassword });

/** Sets the password of whoever the link is for, ends their other sign-ins, and signs them in here. */
export const POST = guarded(
  'POST /api/people/new-password',
  async ({ request: { headers }, body, store, at }) => {
    const { token, password } = parseFields(fields, body);
    const asked = await holderOf(token);
    if (asked) refuseOwnWords(password, asked);
    const holder = await usePasswordLink(token, password);
    if (!holder) {
      throw new Refusal(
        410,
        'This link was used, or it is too old. Ask the owner of this site for a new one.',
      );
    }
    // Whoever was shut out by wrong tries gets in by the link.
    await forgetTries(store.db, ['account', 'code', 'codeDay'], accountKey(holder.email));
    await noteInTrail(store, {
      at,
      actor: `user ${holder.userId}`,
      action: 'chose a password',
      subject: `user ${holder.userId}`,
    });
    const signedIn = await startDeskSession(headers, { email: holder.email, password });
    return answerSignedIn(signedIn ?? { cookies: [], needsCode: false });
  },
);
