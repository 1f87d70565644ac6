import { spawn } from 'node:child_process';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The top folder of the project, wherever the command was started from. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** A failure the reader can do something about: its message is shown, its stack is not. */
export class PlainError extends Error {}

/** Everything a command says about itself goes to stderr, so that what it makes can be piped. */
export function say(line) {
  process.stderr.write(`${line}\n`);
}

/** Runs one step, saying what it is and how many seconds it took. The step's error passes through. */
export async function step(name, work) {
  const begun = Date.now();
  say(`– ${name} …`);
  try {
    const result = await work();
    say(`  done in ${seconds(begun)} s: ${name}`);
    return result;
  } catch (error) {
    say(`  FAILED after ${seconds(begun)} s: ${name}`);
    throw error;
  }
}

function seconds(begun) {
  return ((Date.now() - begun) / 1000).toFixed(1);
}

/** Runs a program in the project's folder with its output shown; throws a PlainError when it does not end with 0. */
export async function run(program, args, { env = {} } = {}) {
  await show([program, ...args].join(' '), program, args, env);
}

/** Runs the program of an installed package, such as 'typescript/bin/tsc', with this very Node. */
export async function runTool(file, args, { env = {} } = {}) {
  const shown = [basename(file), ...args].join(' ');
  await show(shown, process.execPath, [join(ROOT, 'node_modules', file), ...args], env);
}

async function show(shown, program, args, env) {
  const end = await new Promise((resolve) => {
    const child = spawn(program, args, {
      cwd: ROOT,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      // Its output goes where our own words go.
      stdio: ['ignore', 2, 2],
      // On Windows npm is a batch file, which only a shell can start.
      shell: process.platform === 'win32' && program !== process.execPath,
    });
    child.once('error', (error) => resolve(error.message));
    child.once('exit', (code, signal) => resolve(code ?? signal));
  });
  if (end !== 0) throw new PlainError(`"${shown}" ended with ${end}.`);
}

/** Runs a command to its end: exit code 0, or a plain sentence and 1. */
export async function runCommand(work) {
  try {
    const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
    if (major < 20 || (major === 20 && minor < 20)) {
      throw new PlainError(`This needs Node.js 20.20 or newer; this is ${process.versions.node}.`);
    }
    await work();
  } catch (error) {
    say(error instanceof PlainError ? `\n${error.message}` : String(error?.stack ?? error));
    process.exitCode = 1;
  }
}
