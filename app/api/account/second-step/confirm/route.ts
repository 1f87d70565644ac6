import * as z from 'zod';
import { endStaffSessions } from '../../../../../lib/store/staff';
import { guarded } from '../../../../access/guard';
import { noteInTrail } from '../../../../accounts/note-in-trail';
import { ownSessions } from '../../../../accounts/own-sessions';
import { typedCode } from '../../../../accounts/password-rules';
import { confirmSecondStep } from '../../../../accounts/second-step';
import { answerWith } from '../../../../accounts/sessions';
import { parseFields } from '../../../../request/refusal';

const fields = z.strictObject({ code: typedCode });

/** The phone shows the right code: the second step is on, and all other sessions, which never took it, are over. */
export const POST = guarded('POST /api/account/second-step/confirm', async (call) => {
  const { person, body, store, at } = call;
  const { code } = parseFields(fields, body);
  const before = await ownSessions(person);
  const { cookies, codes } = await confirmSecondStep(call, code);
  for (const { id } of before) await endStaffSessions(store.db, person.userId, { only: id });
  const actor = `user ${person.userId}`;
  await noteInTrail(store, { at, actor, action: 'turned the second step on', subject: actor });
  return answerWith({ ok: true, codes }, cookies);
});
