import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { makeStaff } from '../../../accounts/new-staff';
import { makePasswordLink } from '../../../accounts/password-links';
import { emailAddress, personName } from '../../../accounts/password-rules';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ name: personName, email: emailAddress });

/** Makes an instructor's account without a password, and the link with which they choose one. */
export const POST = guarded('POST /api/people/invite', async ({ request: { headers }, person, body, at }) => {
  const { name, email } = parseFields(fields, body);
  const userId = await makeStaff({ name, email, role: 'instructor', by: person.userId, at });
  return Response.json({ ok: true, name, ...(await makePasswordLink(headers, userId, 'invitation')) });
});
