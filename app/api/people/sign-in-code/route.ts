import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { typedCode } from '../../../accounts/password-rules';
import { passSecondStep } from '../../../accounts/second-step';
import { answerSignedIn } from '../../../accounts/sessions';

/** The second step of signing in, after the password was right. */
export const POST = guarded('POST /api/people/sign-in-code', async (call) => {
  const { code, onward } = call.read(z.strictObject({ code: typedCode, onward: z.string().optional() }));
  const { cookies, userId, byRecovery } = await passSecondStep(call, code);
  if (byRecovery) {
    const actor = `user ${userId}`;
    await noteInTrail(call.store, { actor, at: call.at }, 'used a recovery code', actor);
  }
  return answerSignedIn({ cookies, needsCode: false }, onward);
});
