import * as z from 'zod';
import { staffByEmail } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { rememberDevice } from '../../../accounts/known-device';
import { noteInTrail } from '../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../accounts/own-password';
import { emailAddress, typedPassword } from '../../../accounts/password-rules';
import { accountKey, answerWith } from '../../../accounts/sessions';
import { wrongField } from '../../../request/refusal';

/** The e-mail is what one signs in with: whoever changes it needs the password. */
export const POST = guarded('POST /api/account/email', async (call) => {
  const { request, person, read, store, by } = call;
  const { email, password } = read(z.strictObject({ email: emailAddress, password: typedPassword }));
  await askOwnPassword(call, password);
  const holder = await staffByEmail(store.db, email);
  if (holder && holder.userId !== person.userId) {
    throw wrongField('email', 'Another account has this e-mail already.');
  }
  const { internalAdapter } = await (await accounts()).$context;
  await internalAdapter.updateUser(person.userId, { email: email.toLowerCase() });
  await noteInTrail(store, by, 'changed their e-mail', by.actor);
  return answerWith({ ok: true }, [rememberDevice(request.headers, [accountKey(email)])]);
});
