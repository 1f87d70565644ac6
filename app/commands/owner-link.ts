import { audited } from '../../lib/store/audit';
import { dropSecondStep, ownerOf } from '../../lib/store/staff';
import { makePasswordLink } from '../accounts/password-links';
import { closeStore, store } from '../server/store';

/**
 * Prints a link with which the owner chooses a new password, and turns their second step off: for an owner who is shut out and has
 * nobody to ask. Whoever may run this on the server may do anything with the site already. Exit 1 when the site has no owner yet.
 */
async function main(): Promise<void> {
  const opened = await store();
  const owner = await ownerOf(opened.db);
  if (!owner) {
    process.stderr.write('This site has no owner yet. Start it: it prints a code to set it up with.\n');
    process.exitCode = 1;
    return;
  }
  if (owner.hasSecondStep) {
    await audited(opened, { actor: 'server', at: Date.now() }, async (trx, note) => {
      await dropSecondStep(trx, owner.userId);
      await note('took the second step off', `user ${owner.userId}`);
    });
  }
  const { link } = await makePasswordLink(new Headers(), owner.userId, 'reset');
  process.stdout.write(`${link}\n`);
}

await main().finally(closeStore);
