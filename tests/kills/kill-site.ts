import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { verifyAudit } from '../../lib/store/audit';
import type { Store, StoreSettings } from '../../lib/store/database';
import { freePort } from '../commands/address.mjs';
import { type PostgresServer, startPostgres } from '../commands/postgres.mjs';
import { startServer } from '../commands/server.mjs';
import { changedAnswers, halfWritten, handInAll, onStore, prepareHandIns, type Sent } from './hand-ins';

export interface Kills {
  /** Of the site's process, by SIGKILL. */
  readonly site: number;
  /** Of the PostgreSQL below it, at once and without a word; 0 on SQLite. */
  readonly database: number;
}

export interface Outcome {
  readonly acknowledged: number;
  /** Receipts of hand-ins that are not there, or are there in another way. */
  readonly lost: readonly string[];
  /** Attempts that have only some of their parts, or one of them twice. */
  readonly halfWritten: readonly string[];
  readonly trailIsWhole: boolean;
}

const CLIENTS = 20;
/** So that each kill falls while some are on their way. */
const BETWEEN_KILLS = 40;
/** After this many hand-ins the next kill falls: a different number each time, so that it falls anywhere. */
const handInsBefore = (kill: number) => 5 + ((kill * 7) % 23);

/** Told after each kill that was lived through: how many there were, and how many hand-ins are acknowledged. */
type Progress = (kills: number, acknowledged: number) => void;

/** Hands in over HTTP to the built site while it, or its database, is killed again and again; then looks at what is there. */
export async function killSite(
  kind: Store['kind'],
  kills: Kills,
  tell: Progress = () => undefined,
): Promise<Outcome> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-kills-'));
  const postgres = kind === 'postgres' ? await startPostgres() : undefined;
  try {
    return await killAndLook({ dataDir, databaseUrl: postgres?.address ?? null }, kills, postgres, tell);
  } finally {
    postgres?.stop();
    await rm(dataDir, { recursive: true, force: true, maxRetries: 20 });
  }
}

async function killAndLook(
  settings: StoreSettings,
  kills: Kills,
  postgres: PostgresServer | undefined,
  tell: Progress,
): Promise<Outcome> {
  const env = {
    DATA_DIR: settings.dataDir,
    DATABASE_URL: settings.databaseUrl ?? '',
    PUBLIC_ADDRESS: '',
  };
  const where = { port: await freePort(), host: '127.0.0.1', env };
  let server = await startServer(where);
  const address = () => server.address;
  const all = kills.site + kills.database;
  const handIns = await onStore(settings, (store) => prepareHandIns(store, all * BETWEEN_KILLS, 1));
  const taken: Sent[] = [];
  for (let kill = 0; kill < all; kill++) {
    const mine = handIns.slice(kill * BETWEEN_KILLS, (kill + 1) * BETWEEN_KILLS);
    const handingIn = handInAll(address, mine, CLIENTS);
    await handingIn.until(handInsBefore(kill));
    // Taken in turn, as far as there are any of each.
    if (postgres && kill % 2 === 0 && kill / 2 < kills.database) {
      postgres.crash();
      postgres.start();
    } else {
      server.kill();
      await server.ended;
      server = await startServer(where);
    }
    await handingIn.until(mine.length);
    taken.push(...handingIn.taken);
    tell(kill + 1, taken.length);
  }
  const lost = await changedAnswers(address, taken);
  await server.stop();
  return onStore(settings, async (store) => ({
    acknowledged: taken.length,
    lost,
    halfWritten: await halfWritten(store),
    trailIsWhole: (await verifyAudit(store.db)).ok,
  }));
}
