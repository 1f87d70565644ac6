import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { PlainError, ROOT } from './steps.mjs';

/** Written by the build. Takes a host and a port. */
export const SERVER = join(ROOT, '.next', 'serve', 'serve.mjs');
const READY_WITHIN_MS = 300_000;
/** Long enough for hand-ins under way to be answered. */
const STOPPED_WITHIN_MS = 15_000;

/**
 * Starts the built site and waits until its first page answers with 200. Gives the address, a promise that is
 * kept when the server ends, `stop`, and `kill`, which asks nobody. Throws a PlainError when it ends early or does not answer in five minutes.
 */
export async function startServer({ port, host, env = {} }) {
  const child = spawn(process.execPath, [SERVER, host, String(port)], {
    cwd: ROOT,
    env: { ...process.env, ...env, PORT: String(port), NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const ended = new Promise((resolve) => {
    child.once('error', resolve);
    child.once('exit', resolve);
  });
  const stop = () => stopChild(child, ended);
  const address = `http://${reachable(host)}:${port}`;
  try {
    await untilReady(address, child);
  } catch (error) {
    await stop();
    throw error;
  }
  return { address, ended, stop, kill: () => child.kill('SIGKILL') };
}

/** Where a browser on this machine finds a server that listens on `host`. */
function reachable(host) {
  if (host === '0.0.0.0' || host === '::') return '127.0.0.1';
  return host.includes(':') ? `[${host}]` : host;
}

async function untilReady(address, child) {
  const last = Date.now() + READY_WITHIN_MS;
  while (Date.now() < last) {
    if (child.exitCode !== null || child.signalCode !== null) {
      throw new PlainError('The server ended before it was ready. Its own words are above.');
    }
    if (await answers(address)) return;
    await wait(100);
  }
  throw new PlainError(
    `The server did not answer with 200 at ${address} within ${READY_WITHIN_MS / 1000} s.`,
  );
}

async function answers(address) {
  try {
    const response = await fetch(address, { signal: AbortSignal.timeout(30_000) });
    await response.arrayBuffer();
    return response.status === 200;
  } catch {
    return false; // not listening yet
  }
}

async function stopChild(child, ended) {
  if (child.exitCode !== null || child.signalCode !== null) return;
  child.kill('SIGTERM');
  const late = setTimeout(() => child.kill('SIGKILL'), STOPPED_WITHIN_MS);
  await ended;
  clearTimeout(late);
}
