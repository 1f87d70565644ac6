import { type ChildProcess, fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, type IncomingMessage, request } from 'node:http';
import { setPriority, tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable } from 'node:stream';

export interface Question {
  readonly method: string;
  readonly path: string;
  readonly headers: NodeJS.Dict<string | string[]>;
  /** What is sent along. */
  readonly body?: Readable;
}

export interface PageMakers {
  /** The answer of one page maker, the rest of it still on its way. Starts that page maker first where it does not run. */
  readonly ask: (seat: number, question: Question) => Promise<IncomingMessage>;
  readonly close: () => void;
}

interface PageMaker {
  readonly child: ChildProcess;
  readonly socketPath: string;
  readonly ready: Promise<void>;
}

/** About a third of the share of a core that an ordinary process gets beside it. */
const NICENESS = 5;

/** Further processes with the same built site, for what takes long: they lay and draw while this one answers. */
export function startPageMakers(program: string): PageMakers {
  const folder = mkdtempSync(join(tmpdir(), 'wall-pages-'));
  const agent = new Agent({ keepAlive: true });
  const running = new Map<number, PageMaker>();
  let begun = 0;

  const start = (seat: number): PageMaker => {
    begun += 1;
    const socketPath =
      process.platform === 'win32'
        ? `\\\\.\\pipe\\wall-${process.pid}-${begun}`
        : join(folder, String(begun));
    const child = fork(program, [socketPath], { env: { ...process.env, PAGE_MAKER: 'yes' } });
    // Whoever hands in goes first on the cores as well.
    if (child.pid !== undefined) setPriority(child.pid, NICENESS);
    const ready = new Promise<void>((resolve, reject) => {
      child.once('message', () => resolve());
      child.once('error', reject);
      child.once('exit', (code) => reject(new Error(`a page maker ended with ${code}`)));
    });
    const maker = { child, socketPath, ready };
    running.set(seat, maker);
    child.once('exit', () => {
      if (running.get(seat) === maker) running.delete(seat);
    });
    return maker;
  };

  return {
    ask: async (seat, { method, path, headers, body }) => {
      const { socketPath, ready } = running.get(seat) ?? start(seat);
      await ready;
      return new Promise((resolve, reject) => {
        const asked = request({ socketPath, method, path, headers, agent }, resolve);
        asked.once('error', reject);
        if (body) body.pipe(asked);
        else asked.end();
      });
    },
    close: () => {
      agent.destroy();
      for (const { child } of running.values()) child.disconnect();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
