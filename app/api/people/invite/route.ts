import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { makeStaff } from '../../../accounts/new-staff';
import { makePasswordLink } from '../../../accounts/password-links';
import { emailAddress, personName } from '../../../accounts/password-rules';

/** Makes an instructor's account without a password, and the link with which they choose one. */
export const POST = guarded('POST /api/people/invite', async ({ request: { headers }, person, read, at }) => {
  const { name, email } = read(z.strictObject({ name: personName, email: emailAddress }));
  const userId = await makeStaff({ name, email, role: 'instructor', by: person.userId, at });
  return { name, ...(await makePasswordLink(headers, userId, 'invitation')) };
});
