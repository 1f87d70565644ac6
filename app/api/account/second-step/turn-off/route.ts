import * as z from 'zod';
import { dropSecondStep } from '../../../../../lib/store/staff';
import { guarded } from '../../../../access/guard';
import { logChange } from '../../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../../accounts/own-password';
import { typedPassword } from '../../../../accounts/password-rules';
import { parseFields } from '../../../../request/refusal';

const fields = z.strictObject({ password: typedPassword });

export const POST = guarded('POST /api/account/second-step/turn-off', async (call) => {
  const { person, store, at } = call;
  const { password } = parseFields(fields, call.body);
  await askOwnPassword(call, password);
  const entry = { at, actor: `user ${person.userId}`, action: 'turned the second step off' };
  await dropSecondStep(store, person.userId, entry);
  logChange({ ...entry, subject: `user ${person.userId}` });
  return Response.json({ ok: true });
});
