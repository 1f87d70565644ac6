import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { addressOf, refuseBusy } from './address.mjs';
import { ensureBuilt, ensureInstalled } from './ready.mjs';
import { startServer } from './server.mjs';
import { PlainError, ROOT, runCommand, say, step } from './steps.mjs';

/** The site's own reader of settings is asked, before the build: its words go straight to the reader. */
function refuseWrongSettings() {
  const tsx = join(ROOT, 'node_modules', 'tsx', 'dist', 'cli.mjs');
  const { status } = spawnSync(process.execPath, [tsx, 'app/commands/settings.ts'], {
    cwd: ROOT,
    stdio: ['ignore', 2, 2],
  });
  if (status !== 0)
    throw new PlainError('The site was not started: mend these settings first (README.md lists them).');
}

await runCommand(async () => {
  // First, so that a mistyped port does not cost a minute of installing.
  const where = addressOf(process.env);
  await refuseBusy(where);
  await ensureInstalled();
  refuseWrongSettings();
  await ensureBuilt();
  const server = await step('start the server', () => startServer(where));
  process.stdout.write(`\nRead the Wall is at ${server.address} (Ctrl-C ends it)\n`);
  if (where.host !== '127.0.0.1' && where.host !== 'localhost') {
    say(`It listens on ${where.host}: other machines may reach it.`);
  }

  let asked = false;
  const stop = () => {
    asked = true;
    void server.stop();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, stop);
  // Between npm and this program stands a shell that dies without passing a signal on: then nobody is left to stop us.
  const parent = process.ppid;
  const isUnderNpm = process.env.npm_lifecycle_event !== undefined;
  if (isUnderNpm) setInterval(() => process.ppid !== parent && stop(), 500).unref();

  await server.ended;
  say(asked ? 'Stopped.' : 'The server ended by itself.');
  process.exitCode = asked ? 0 : 1;
});
