import { createHash, randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { verifyAudit } from '../../lib/store/audit';
import { openDatabase, type Store, type StoreSettings } from '../../lib/store/database';
import { freePort } from '../commands/address.mjs';
import { type PostgresServer, startPostgres } from '../commands/postgres.mjs';
import { startServer } from '../commands/server.mjs';
import { realWalls } from '../store/samples/real-walls';
import { openAttempt, sampleAnswers, sampleAttempt } from '../store/samples/sample-attempt';

export interface Kills {
  /** Of the site's process, by SIGKILL. */
  readonly site: number;
  /** Of the PostgreSQL below it, at once and without a word; 0 on SQLite. */
  readonly database: number;
}

export interface Outcome {
  readonly acknowledged: number;
  /** Receipts whose hand-in is not there, or is there with another receipt. */
  readonly lost: readonly string[];
  /** Attempts that have only some of their parts, or one of them twice. */
  readonly halfWritten: readonly string[];
  readonly trailIsWhole: boolean;
}

interface Receipt {
  readonly body: string;
  readonly receipt: string;
}

const CLIENTS = 20;
const TOKEN = 'a token';
/** After this many hand-ins the next kill falls: a different number each time, so that it falls anywhere. */
const handInsBefore = (kill: number) => 5 + ((kill * 7) % 23);

/** Hands in over HTTP to the built site while it, or its database, is killed again and again; then looks at what is there. */
export async function killSite(kind: Store['kind'], kills: Kills): Promise<Outcome> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-kills-'));
  const postgres = kind === 'postgres' ? await startPostgres() : undefined;
  try {
    return await killAndLook({ dataDir, databaseUrl: postgres?.address ?? null }, kills, postgres);
  } finally {
    postgres?.stop();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

async function killAndLook(
  settings: StoreSettings,
  kills: Kills,
  postgres: PostgresServer | undefined,
): Promise<Outcome> {
  const env = {
    DATA_DIR: settings.dataDir,
    DATABASE_URL: settings.databaseUrl ?? '',
    PUBLIC_ADDRESS: '',
  };
  const where = { port: await freePort(), host: '127.0.0.1', env };
  let server = await startServer(where);
  const bodies = await onStore(settings, (store) => prepare(store, (kills.site + kills.database) * 40));
  const receipts: Receipt[] = [];
  let isOver = false;
  const next = bodies[Symbol.iterator]();
  const clients = Array.from({ length: CLIENTS }, async () => {
    for (const body of next) {
      const receipt = await sendUntilTaken(server.address, body, () => isOver);
      if (receipt === undefined) return;
      receipts.push({ body, receipt });
    }
  });
  // A refusal ends the run at once: it would be final on a device.
  const handingIn = Promise.all(clients);
  handingIn.catch(() => undefined);
  const all = kills.site + kills.database;
  for (let kill = 0; kill < all; kill++) {
    const enough = receipts.length + handInsBefore(kill);
    while (receipts.length < Math.min(enough, bodies.length - CLIENTS))
      await Promise.race([wait(2), handingIn]);
    // Taken in turn, as far as there are any of each.
    if (postgres && kill % 2 === 0 && kill / 2 < kills.database) {
      postgres.crash();
      postgres.start();
    } else {
      server.kill();
      await server.ended;
      server = await startServer(where);
    }
  }
  isOver = true;
  await handingIn;
  const lost: string[] = [];
  for (const { body, receipt } of receipts) {
    if ((await sendUntilTaken(server.address, body, () => false)) !== receipt) lost.push(receipt);
  }
  await server.stop();
  return onStore(settings, async (store) => ({
    acknowledged: receipts.length,
    lost,
    halfWritten: await halfWritten(store),
    trailIsWhole: (await verifyAudit(store.db)).ok,
  }));
}

async function onStore<T>(settings: StoreSettings, work: (store: Store) => Promise<T>): Promise<T> {
  const store = await openDatabase(settings);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** A learner with as many open attempts, each with its hand-in as a device keeps it until it is acknowledged. */
async function prepare(store: Store, count: number): Promise<readonly string[]> {
  const walls = realWalls();
  const { work, learner, attempt } = await sampleAttempt(store, undefined, walls);
  const token_hash = createHash('sha256').update(TOKEN).digest('base64url');
  const session = { token_hash, learner_id: learner, created_at: 0, expires_at: Date.now() + 86_400_000 };
  await store.db.insertInto('learner_session').values(session).execute();
  const attempts = [attempt];
  while (attempts.length < count)
    attempts.push(await openAttempt(store, work, learner, attempts.length + 1, walls));
  return attempts.map((id) =>
    JSON.stringify({ attempt: id, key: randomUUID(), walls: sampleAnswers(walls) }),
  );
}

/** As a device does: the same body until a receipt comes. @throws for a refusal that would be final. */
async function sendUntilTaken(
  address: string,
  body: string,
  isOver: () => boolean,
): Promise<string | undefined> {
  while (!isOver()) {
    const headers = {
      'content-type': 'application/json',
      'sec-fetch-site': 'same-origin',
      cookie: `learner=${TOKEN}`,
    };
    const answer = await fetch(`${address}/api/hand-in`, { method: 'POST', headers, body }).catch(() => null);
    const text = (await answer?.text().catch(() => null)) ?? null;
    if (answer?.ok && text !== null) return (JSON.parse(text) as { readonly receipt: string }).receipt;
    if (answer && answer.status < 500 && text !== null)
      throw new Error(`a hand-in was refused: ${answer.status} ${text}`);
    await wait(20);
  }
  return undefined;
}

async function halfWritten({ db }: Store): Promise<readonly string[]> {
  const attempts = await db.selectFrom('attempt').select(['id', 'state', 'hand_in_key']).execute();
  const results = countBy(await db.selectFrom('result_version').select('attempt_id as of').execute());
  const answered = countBy(
    await db.selectFrom('attempt_wall').select('attempt_id as of').where('marks', '!=', '[]').execute(),
  );
  const told = countBy(await db.selectFrom('audit').select('subject as of').execute());
  const walls = realWalls().length;
  return attempts.flatMap(({ id, state, hand_in_key }) => {
    const parts = [results.get(id) ?? 0, answered.get(id) ?? 0, told.get(`attempt ${id}`) ?? 0].join();
    const isWhole = state === 'open' ? hand_in_key === null && parts === '0,0,0' : parts === `1,${walls},1`;
    return isWhole ? [] : [id];
  });
}

function countBy(rows: readonly { readonly of: string }[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { of } of rows) counts.set(of, (counts.get(of) ?? 0) + 1);
  return counts;
}
