import * as z from 'zod';
import { guarded } from '../../../../access/guard';
import { askOwnPassword } from '../../../../accounts/own-password';
import { typedPassword } from '../../../../accounts/password-rules';
import { beginSecondStep } from '../../../../accounts/second-step';

/** Makes the key for the phone and the recovery codes. Nothing changes for signing in yet. */
export const POST = guarded('POST /api/account/second-step/begin', async (call) => {
  const { password } = call.read(z.strictObject({ password: typedPassword }));
  await askOwnPassword(call, password);
  return beginSecondStep(call.request, password);
});
