import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { personName } from '../../../accounts/password-rules';
import { parseFields } from '../../../request/refusal';

const fields = z.strictObject({ name: personName });

export const POST = guarded('POST /api/account/name', async ({ person, body }) => {
  const { name } = parseFields(fields, body);
  await (await (await accounts()).$context).internalAdapter.updateUser(person.userId, { name });
  return Response.json({ ok: true });
});
