import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { SERVER } from '../commands/server.mjs';

export interface OwnSite {
  readonly address: string;
  /** As the server printed it when it started. */
  readonly startCode: string;
  /** All that the server has said so far: start code and log. */
  readonly said: () => string;
  readonly close: () => Promise<void>;
}

const PRINTED_CODE = /type this code:\s+([0-9A-Z]{4}(?:-[0-9A-Z]{4}){3})/;
const READY_WITHIN_MS = 300_000;

/** The built site once more, with an empty database: what one test sets up is not in the way of another. */
export async function openOwnSite(env: Readonly<Record<string, string>> = {}): Promise<OwnSite> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-site-'));
  const port = String(await freePort());
  const child = spawn(process.execPath, [SERVER, '127.0.0.1', port], {
    env: {
      ...process.env,
      NODE_ENV: 'production',
      NEXT_TELEMETRY_DISABLED: '1',
      DATA_DIR: dataDir,
      DATABASE_URL: '',
      PUBLIC_ADDRESS: '',
      PORT: port,
      ...env,
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let words = '';
  child.stderr?.on('data', (chunk: Buffer) => {
    words += chunk.toString();
  });
  const close = async () => {
    await ended(child);
    // What draws walls ahead ends a moment after the site.
    await rm(dataDir, { recursive: true, force: true, maxRetries: 20 });
  };
  try {
    const startCode = await printedCode(child);
    const address = `http://127.0.0.1:${port}`;
    await answering(address);
    return { address, startCode, said: () => words, close };
  } catch (error) {
    await close();
    throw error;
  }
}

function printedCode(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    const late = setTimeout(() => reject(new Error(`no start code: ${printed}`)), READY_WITHIN_MS);
    child.stderr?.on('data', (chunk: Buffer) => {
      printed += chunk.toString();
      const [, code] = PRINTED_CODE.exec(printed) ?? [];
      if (!code) return;
      clearTimeout(late);
      resolve(code);
    });
    child.once('exit', () => reject(new Error(`the site ended: ${printed}`)));
  });
}

async function answering(address: string): Promise<void> {
  const last = Date.now() + READY_WITHIN_MS;
  while (Date.now() < last) {
    const ok = await fetch(`${address}/api/health`).then(
      (answer) => answer.ok,
      () => false,
    );
    if (ok) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`${address} does not answer`);
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const gone = new Promise((resolve) => child.once('exit', resolve));
  child.kill('SIGTERM');
  const late = setTimeout(() => child.kill('SIGKILL'), 60_000);
  await gone;
  clearTimeout(late);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
