import * as z from 'zod';
import { dropSecondStep } from '../../../../../lib/store/staff';
import { guarded } from '../../../../access/guard';
import { changeRights } from '../../../../accounts/note-in-trail';
import { askOwnPassword } from '../../../../accounts/own-password';
import { typedPassword } from '../../../../accounts/password-rules';

export const POST = guarded('POST /api/account/second-step/turn-off', async (call) => {
  const { person, read, store, by } = call;
  const { password } = read(z.strictObject({ password: typedPassword }));
  await askOwnPassword(call, password);
  await changeRights(store, by, async (trx, note) => {
    await dropSecondStep(trx, person.userId);
    return note('turned the second step off', by.actor);
  });
});
