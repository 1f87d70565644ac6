import * as z from 'zod';
import { endStaffSessions } from '../../../../../lib/store/staff';
import { guarded } from '../../../../access/guard';
import { noteInTrail } from '../../../../accounts/note-in-trail';
import { ownSessions } from '../../../../accounts/own-sessions';
import { typedCode } from '../../../../accounts/password-rules';
import { confirmSecondStep } from '../../../../accounts/second-step';
import { answerWith } from '../../../../accounts/sessions';

/** The phone shows the right code: the second step is on, and all other sessions, which never took it, are over. */
export const POST = guarded('POST /api/account/second-step/confirm', async (call) => {
  const { person, read, store, by } = call;
  const { code } = read(z.strictObject({ code: typedCode }));
  const before = await ownSessions(person);
  const cookies = await confirmSecondStep(call, code);
  for (const { id } of before) await endStaffSessions(store.db, person.userId, { only: id });
  await noteInTrail(store, by, 'turned the second step on', by.actor);
  return answerWith({ ok: true }, cookies);
});
