import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../accounts/own-password';
import { setPassword } from '../../../accounts/password-links';
import { newPassword, refuseOwnWords, typedPassword } from '../../../accounts/password-rules';

/** A new password in the place of the old one. Only this session goes on. */
export const POST = guarded('POST /api/account/password', async (call) => {
  const { person, read, store, by } = call;
  const { password, chosen } = read(z.strictObject({ password: typedPassword, chosen: newPassword }));
  refuseOwnWords(chosen, person, 'chosen');
  await askOwnPassword(call, password);
  await setPassword(person.userId, chosen, person.session.id);
  await noteInTrail(store, by, 'chose a password', by.actor);
});
