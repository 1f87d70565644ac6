import { hasOwner } from '../../lib/store/staff';
import { settings } from '../server/settings';
import { store } from '../server/store';
import { accounts } from './accounts';
import { hashOf, makeCode } from './codes';

const VALID_MS = 24 * 60 * 60_000;

/** A new code. Those made before stay good: two servers on one database each print their own. */
export async function makeStartCode(): Promise<string> {
  const code = makeCode(4);
  const { internalAdapter } = await (await accounts()).$context;
  await internalAdapter.createVerificationValue({
    identifier: identifierOf(code),
    value: 'owner',
    expiresAt: new Date(Date.now() + VALID_MS),
  });
  return code;
}

/** While the site has no owner, prints a code with which one can be made: whoever reads the server's words runs the server. */
export async function announceStartCode(): Promise<void> {
  const { db } = await store();
  if (await hasOwner(db)) return;
  const code = await makeStartCode();
  const { publicAddress, port } = settings();
  process.stderr.write(
    `\nThis site has no owner yet. Open ${publicAddress ?? `http://127.0.0.1:${port}`}/set-up and type this code:\n\n    ${code}\n\nIt works once, for 24 hours. Start the site again for a new one.\n\n`,
  );
}

/** Uses a code up. True for one caller only. */
export async function useStartCode(code: string): Promise<boolean> {
  const { internalAdapter } = await (await accounts()).$context;
  return (await internalAdapter.consumeVerificationValue(identifierOf(code))) !== null;
}

function identifierOf(code: string): string {
  return `start code ${hashOf(code)}`;
}
