import { addressOf, refuseBusy } from './address.mjs';
import { ensureInstalled } from './ready.mjs';
import { runCommand, runTool } from './steps.mjs';

await runCommand(async () => {
  const where = addressOf(process.env);
  await refuseBusy(where);
  await ensureInstalled();
  await runTool('next/dist/bin/next', ['dev', '--port', String(where.port), '--hostname', where.host]);
});
