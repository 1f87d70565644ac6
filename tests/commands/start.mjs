import { addressOf, refuseBusy } from './address.mjs';
import { ensureBuilt, ensureInstalled } from './ready.mjs';
import { startServer } from './server.mjs';
import { runCommand, say, step } from './steps.mjs';

await runCommand(async () => {
  // First, so that a mistyped port does not cost a minute of installing.
  const where = addressOf(process.env);
  await refuseBusy(where);
  await ensureInstalled();
  await ensureBuilt();
  const server = await step('start the server', () => startServer(where));
  process.stdout.write(`\nRead the Wall is at ${server.address} (Ctrl-C ends it)\n`);
  if (where.host !== '127.0.0.1' && where.host !== 'localhost') {
    say(`It listens on ${where.host}: other machines may reach it.`);
  }

  let asked = false;
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => {
      asked = true;
      void server.stop();
    });
  }
  await server.ended;
  say(asked ? 'Stopped.' : 'The server ended by itself.');
  process.exitCode = asked ? 0 : 1;
});
