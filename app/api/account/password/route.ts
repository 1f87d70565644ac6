import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../accounts/own-password';
import { setPassword } from '../../../accounts/password-links';
import { newPassword, refuseOwnWords, typedPassword } from '../../../accounts/password-rules';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ password: typedPassword, chosen: newPassword });

/** A new password in the place of the old one. Only this session goes on. */
export const POST = guarded('POST /api/account/password', async (call) => {
  const { person, body, store, at } = call;
  const { password, chosen } = parseFields(fields, body);
  refuseOwnWords(chosen, person, 'chosen');
  await askOwnPassword(call, password);
  await setPassword(person.userId, chosen, person.session.id);
  const actor = `user ${person.userId}`;
  await noteInTrail(store, { at, actor, action: 'chose a password', subject: actor });
  return Response.json({ ok: true });
});
