import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { typedCode } from '../../../accounts/password-rules';
import { passSecondStep } from '../../../accounts/second-step';
import { answerSignedIn } from '../../../accounts/sessions';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ code: typedCode, onward: z.string().optional() });

/** The second step of signing in, after the password was right. */
export const POST = guarded('POST /api/people/sign-in-code', async (call) => {
  const { code, onward } = parseFields(fields, call.body);
  const { cookies, userId, byRecovery } = await passSecondStep(call, code);
  if (byRecovery) {
    const actor = `user ${userId}`;
    await noteInTrail(call.store, { at: call.at, actor, action: 'used a recovery code', subject: actor });
  }
  return answerSignedIn({ cookies, needsCode: false }, onward);
});
