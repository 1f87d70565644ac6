import { createServer } from 'node:net';
import { hostname } from 'node:os';
import { PlainError } from './steps.mjs';

/** Reads PORT and HOSTNAME. Throws a PlainError that names the variable when a value cannot be used. */
export function addressOf(env) {
  return { port: portOf(env.PORT), host: hostOf(env.HOSTNAME) };
}

function portOf(text) {
  if (text === undefined || text === '') return 3000;
  const port = Number(text);
  if (!/^\d+$/.test(text) || port < 1 || port > 65535) {
    throw new PlainError(`PORT must be a whole number from 1 to 65535. It is "${text}".`);
  }
  return port;
}

// Some shells and containers set HOSTNAME to the machine's own name without being asked. That is no wish to be
// reached from outside, so only another value counts.
function hostOf(text) {
  return text === undefined || text === '' || text === hostname() ? '127.0.0.1' : text;
}

/**
 * Throws a PlainError when nothing can listen there: port taken, not allowed, or not an address of this machine; or when no browser
 * would open it.
 */
export async function refuseBusy({ port, host }) {
  const problem = await listenProblem(port, host);
  if (problem === 'EADDRINUSE') {
    throw new PlainError(
      `Port ${port} on ${host} is taken by another program. Choose another one: PORT=${port === 65535 ? 3000 : port + 1} npm start`,
    );
  }
  if (problem === 'EACCES') {
    throw new PlainError(
      `Port ${port} is kept for the administrator. Choose one above 1023: PORT=3000 npm start`,
    );
  }
  if (problem) {
    throw new PlainError(`HOSTNAME is "${host}", and this machine has no such address (${problem}).`);
  }
  if (await isBarred(port)) {
    throw new PlainError(`Browsers do not open port ${port}. Choose another one: PORT=3000 npm start`);
  }
}

/** Ports that the Fetch Standard bars, since other programs speak on them. Node's own fetch keeps to the list, and says so. */
async function isBarred(port) {
  try {
    await fetch(`http://127.0.0.1:${port}`, { signal: AbortSignal.timeout(1_000) });
    return false;
  } catch (error) {
    return error.cause?.message === 'bad port';
  }
}

async function listenProblem(port, host) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (error) => resolve(error.code ?? String(error)));
    probe.listen(port, host, () => probe.close(() => resolve(undefined)));
  });
}

/** A port nobody uses now. */
export async function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
