import * as z from 'zod';
import { guarded } from '../../../../access/guard';
import { noteInTrail } from '../../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../../accounts/own-password';
import { typedPassword } from '../../../../accounts/password-rules';
import { newRecoveryCodes } from '../../../../accounts/second-step';

/** Makes new recovery codes; those of before no longer work. */
export const POST = guarded('POST /api/account/second-step/new-codes', async (call) => {
  const { password } = call.read(z.strictObject({ password: typedPassword }));
  await askOwnPassword(call, password);
  const codes = await newRecoveryCodes(call.request, password);
  await noteInTrail(call.store, call.by, 'made new recovery codes', call.by.actor);
  return { codes };
});
