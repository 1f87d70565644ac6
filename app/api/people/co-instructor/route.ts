import * as z from 'zod';
import { appendAudit } from '../../../../lib/store/audit';
import { addCoInstructor, removeCoInstructor, staffByEmail } from '../../../../lib/store/staff';
import { guarded } from '../../../access/guard';
import { logChange } from '../../../accounts/note-in-trail';
import { emailAddress } from '../../../accounts/password-rules';
import { parseFields, wrongField } from '../../../request/refusal';

const fields = z.strictObject({
  group: z.string(),
  email: emailAddress,
  part: z.enum(['co', 'none']),
});

/** Makes somebody a co-instructor of a group, or takes that away. */
export const POST = guarded('POST /api/people/co-instructor', async ({ person, body, store, at }) => {
  const { group, email, part } = parseFields(fields, body);
  const member = await staffByEmail(store.db, email);
  if (!member) {
    throw wrongField(
      'email',
      'Nobody with this e-mail can sign in here yet. Ask the owner of this site to invite them.',
    );
  }
  const entry = {
    at,
    actor: `user ${person.userId}`,
    action: part === 'co' ? 'made co-instructor' : 'no longer co-instructor',
    subject: `user ${member.userId}`,
    detail: { group },
  };
  await store.db.transaction().execute(async (trx) => {
    if (part === 'co') await addCoInstructor(trx, group, member.userId);
    else await removeCoInstructor(trx, group, member.userId);
    await appendAudit(trx, store.kind, entry);
  });
  logChange(entry);
  return Response.json({ ok: true });
});
