import * as z from 'zod';
import { guarded } from '../../../access/guard';
import { accounts } from '../../../accounts/accounts';
import { personName } from '../../../accounts/password-rules';

export const POST = guarded('POST /api/account/name', async ({ person, read }) => {
  const { name } = read(z.strictObject({ name: personName }));
  await (await (await accounts()).$context).internalAdapter.updateUser(person.userId, { name });
});
