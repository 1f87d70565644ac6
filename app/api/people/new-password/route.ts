import * as z from 'zod';
import { forgetTries } from '../../../../lib/store/throttle';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { holderOf, usePasswordLink } from '../../../accounts/password-links';
import { newPassword, refuseOwnWords } from '../../../accounts/password-rules';
import { accountKey, answerSignedIn, startDeskSession } from '../../../accounts/sessions';
import { Refusal } from '../../../request/refusal';

/** Sets the password of whoever the link is for, ends their other sign-ins, and signs them in here. */
export const POST = guarded(
  'POST /api/people/new-password',
  async ({ request: { headers }, read, store, at }) => {
    const { token, password } = read(z.strictObject({ token: z.string().max(100), password: newPassword }));
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
    const actor = `user ${holder.userId}`;
    await noteInTrail(store, { actor, at }, 'chose a password', actor);
    const signedIn = await startDeskSession(headers, { email: holder.email, password });
    return answerSignedIn(signedIn ?? { cookies: [], needsCode: false });
  },
);
