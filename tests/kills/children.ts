import { type ChildProcess, spawn } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { onTestFinished } from 'vitest';
import type { StoreSettings } from '../../lib/store/database';

export interface Child {
  readonly process: ChildProcess;
  /** Grows as the child tells. */
  readonly lines: string[];
  /** Kept when it has ended and everything it told is in `lines`; false when it was killed. */
  readonly ended: Promise<boolean>;
}

let bundled: Promise<string> | undefined;

/** Bundled once and beside the packages: a child then starts in a tenth of the time. */
async function bundle(): Promise<string> {
  const folder = join('node_modules', '.cache', 'storage-tests');
  mkdirSync(folder, { recursive: true });
  const outfile = join(folder, `child-${process.pid}.mjs`);
  await build({
    entryPoints: ['tests/kills/child-program.ts'],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    // Native code, and what asks for its parts by name.
    external: ['better-sqlite3', 'pg'],
    logLevel: 'error',
  });
  return outfile;
}

export async function startChild(task: string, settings: StoreSettings, ...args: string[]): Promise<Child> {
  bundled ??= bundle();
  const child = spawn(process.execPath, [await bundled, task, JSON.stringify(settings), ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => void child.kill('SIGKILL'));
  const lines: string[] = [];
  let rest = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    const parts = (rest + text).split('\n');
    rest = parts.pop() ?? '';
    lines.push(...parts);
  });
  const ended = new Promise<boolean>((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code, signal) =>
      code === 0 || signal === 'SIGKILL'
        ? resolve(code === 0)
        : reject(new Error(`${task} ended with ${code}`)),
    );
  });
  return { process: child, lines, ended };
}

/** Runs a task to its end and gives the last line it told. */
export async function runChild(task: string, settings: StoreSettings, ...args: string[]): Promise<string> {
  const child = await startChild(task, settings, ...args);
  await child.ended;
  return child.lines.at(-1) ?? '';
}
