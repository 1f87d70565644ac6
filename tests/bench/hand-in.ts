import { type ChildProcess, spawn } from 'node:child_process';
import { createHash, randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { openDatabase, type Store } from '../../lib/store/database';
import { realWalls } from '../store/samples/real-walls';
import { openAttempt, sampleAnswers, sampleAttempt } from '../store/samples/sample-attempt';
import { load, type Outcome } from './load/send-steadily';

/** A class after the other at the end of an exam, a burst on fresh connections, and a class of which each has walls of their own. */
const RUNS = [
  { name: 'steady, the same wall', perSecond: 100, seconds: 60, sameWall: true },
  { name: 'burst, the same wall', perSecond: 100, seconds: 5, sameWall: true },
  { name: 'steady, another wall each time', perSecond: 50, seconds: 30, sameWall: false },
] as const;
const MOST_P99_MS = 250;
const HOST = '127.0.0.1';

/** tests/commands/bench.mjs builds the site first. */
export const needsBuild = true;

/**
 * Hand-ins of one wall each over loopback: the site lays the wall again, marks it and stores it durably. Beside it, in the same run,
 * bare Node that only stores the same body durably.
 */
export async function run(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'wall-bench-'));
  const children: ChildProcess[] = [];
  try {
    const bare = await startServer(children, {}, 'tests/bench/bare-server.mjs', join(folder, 'bare.sqlite'));
    const site = await startServer(
      children,
      { DATA_DIR: folder, DATABASE_URL: '', PUBLIC_ADDRESS: '', NODE_ENV: 'production' },
      '.next/serve/serve.mjs',
      HOST,
    );
    const store = await openDatabase({ dataDir: folder, databaseUrl: null });
    for (const { name, perSecond, seconds, sameWall } of RUNS) {
      const cases = await makeCases(store, perSecond * seconds, sameWall);
      const before = await handInsIn(store);
      const url = `${site}/api/hand-in`;
      const cookie = `learner=${TOKEN}`;
      const ours = await load({
        bodies: cases,
        perSecond,
        url,
        headers: { 'sec-fetch-site': 'same-origin', cookie },
      });
      const rows = (await handInsIn(store)) - before;
      const theirs = await load({
        bodies: cases.slice(0, perSecond * 10),
        perSecond,
        url: bare,
        headers: {},
      });
      tell(`${name}: ${perSecond} hand-ins a second for ${seconds} s`, ours, theirs, rows);
    }
    await store.close();
  } finally {
    for (const child of children) child.kill();
    rmSync(folder, { recursive: true, force: true });
  }
}

function tell(what: string, ours: Outcome, bare: Outcome, rows: number): void {
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  const held = ours.p99 <= MOST_P99_MS && ours.errors === 0 && rows === ours.acknowledged;
  console.log(
    `${what}: p50 ${ms(ours.p50)}, p99 ${ms(ours.p99)} (at most ${MOST_P99_MS}), worst ${ms(ours.most)}, ` +
      `${ours.errors} errors, ${ours.acknowledged} acknowledged, ${rows} rows; p99 is ${(ours.p99 / bare.p99).toFixed(1)} times ` +
      `that of bare Node with the same durable insert (${ms(bare.p99)}): ${held ? 'held' : 'NOT HELD'}`,
  );
}

async function handInsIn({ db }: Store): Promise<number> {
  const { count } = await db
    .selectFrom('result_version')
    .select((e) => e.fn.countAll<number>().as('count'))
    .executeTakeFirstOrThrow();
  return count;
}

const TOKEN = 'a token of the bench';

/** Bodies of as many hand-ins, each of an open attempt of its own. */
async function makeCases(store: Store, count: number, sameWall: boolean): Promise<readonly string[]> {
  const wallsOf = (number: number) => realWalls([sameWall ? 1 : number]);
  const { work, learner, attempt } = await sampleAttempt(store, undefined, wallsOf(1));
  await store.db.deleteFrom('learner_session').execute();
  await store.db
    .insertInto('learner_session')
    .values({
      token_hash: createHash('sha256').update(TOKEN).digest('base64url'),
      learner_id: learner,
      created_at: 0,
      expires_at: Number.MAX_SAFE_INTEGER,
    })
    .execute();
  const bodyOf = (id: string, walls: ReturnType<typeof realWalls>) =>
    JSON.stringify({ attempt: id, key: randomUUID(), walls: sampleAnswers(walls) });
  const bodies = [bodyOf(attempt, wallsOf(1))];
  while (bodies.length < count) {
    const number = bodies.length + 1;
    const walls = wallsOf(number);
    bodies.push(bodyOf(await openAttempt(store, work, learner, number, walls), walls));
  }
  return bodies;
}

/** Starts a program that takes its port as its last argument; gives its address when it listens. */
async function startServer(
  children: ChildProcess[],
  env: Readonly<Record<string, string>>,
  ...args: string[]
): Promise<string> {
  const port = await freePort();
  const child = spawn(process.execPath, [...args, String(port)], {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  children.push(child);
  const address = `http://${HOST}:${port}`;
  for (;;) {
    if (child.exitCode !== null) throw new Error(`${args[0]} ended with ${child.exitCode}`);
    if (await fetch(address, { method: 'HEAD' }).catch(() => undefined)) return address;
    await wait(100);
  }
}

async function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, HOST, () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
