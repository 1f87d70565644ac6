import type { Store } from '../../lib/store/database';
import { wrongField } from '../request/refusal';
import { accounts } from './accounts';
import { isSecretOf } from './passwords';
import type { Staff } from './people';
import { rateLimited } from './rate-limit';
import { accountKey } from './sessions';

/** Asks for the password once more, before what nobody may change on a device left open. @throws Refusal when it is wrong. */
export async function askOwnPassword(
  {
    store,
    request: { headers },
    person: { userId, email },
    at,
  }: {
    readonly store: Store;
    readonly request: Request;
    readonly person: Staff;
    readonly at: number;
  },
  password: string,
): Promise<void> {
  const guess = { kinds: ['account'] as const, of: accountKey(email), subject: `user ${userId}` };
  const right = await rateLimited({ store, headers, at, ...guess }, async () => {
    const { internalAdapter } = await (await accounts()).$context;
    const hashed = (await internalAdapter.findCredentialAccount(userId))?.password;
    return (hashed && (await isSecretOf(hashed, password))) || undefined;
  });
  if (!right) throw wrongField('password', 'This is not your password.');
}
