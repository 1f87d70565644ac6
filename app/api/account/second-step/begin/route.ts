import * as z from 'zod';
import { guarded } from '../../../../access/guard';
import { askOwnPassword } from '../../../../accounts/own-password';
import { typedPassword } from '../../../../accounts/password-rules';
import { beginSecondStep } from '../../../../accounts/second-step';
import { parseFields } from '../../../../request/refusal';

const fields = z.strictObject({ password: typedPassword });

/** Makes the key for the phone. Nothing changes for signing in yet. */
export const POST = guarded('POST /api/account/second-step/begin', async (call) => {
  const { password } = parseFields(fields, call.body);
  await askOwnPassword(call, password);
  return Response.json({ ok: true, ...(await beginSecondStep(call.request, password)) });
});
