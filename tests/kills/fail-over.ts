import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { verifyAudit } from '../../lib/store/audit';
import { freePort } from '../commands/address.mjs';
import { type PostgresServer, startPostgres } from '../commands/postgres.mjs';
import { type RunningServer, startServer } from '../commands/server.mjs';
import { type FloatingAddress, openBalancer, openFloatingAddress } from './addresses';
import { ask } from './ask';
import { changedAnswers, halfWritten, handInAll, onStore, prepareHandIns, type Sent } from './hand-ins';
import type { Outcome } from './kill-site';
import { startStandby } from './standby';

/** What goes wrong while work is handed in. */
export type Failure =
  /** One process of the site is killed and started again. */
  | 'a site is killed'
  /** Every connection to the database is dropped. */
  | 'connections drop'
  /** The first database ends at once; the standby takes its place. */
  | 'the database dies'
  /** The first database's machine falls silent: no connection is closed, none is answered. The standby takes its place. */
  | 'the database falls silent'
  /** The standby is away for a while: what only one database has is not acknowledged. */
  | 'the standby is away';

export interface FailedOver extends Outcome {
  /** Hand-ins acknowledged while only one database had them. */
  readonly acknowledgedByOne: number;
  /** How often a device was told that nothing can be stored just now, and when to come back. */
  readonly askedBack: number;
}

const SITES = 3;
const DEVICES = 12;
const LEARNERS = 6;
const AWAY_MS = 3_000;
/** From the end of one database to the next taking its place. */
const WITHOUT_MS = 2_000;

/** Three processes of the built site behind a balancer, on a PostgreSQL with a standby that has every commit before it is acknowledged. */
export async function failOver(handIns: number, failures: readonly Failure[]): Promise<FailedOver> {
  const folder = mkdtempSync(join(tmpdir(), 'wall-fail-over-'));
  const databases = await startDatabases();
  let sites: RunningServer[] = [];
  try {
    const env = {
      DATA_DIR: folder,
      DATABASE_URL: databases.url,
      PUBLIC_ADDRESS: '',
      SECRET: 'one and the same for every process of the site',
    };
    const start = async () => startServer({ port: await freePort(), host: '127.0.0.1', env });
    sites = await Promise.all(Array.from({ length: SITES }, start));
    const balancer = await openBalancer(() => sites.map(({ address }) => address));
    const settings = { dataDir: folder, databaseUrl: databases.url };
    const prepared = await onStore(settings, (store) => prepareHandIns(store, handIns, LEARNERS));
    const address = () => balancer.address;
    const taken: Sent[] = [];
    let acknowledgedByOne = 0;
    let askedBack = 0;
    const part = Math.ceil(handIns / failures.length);
    for (const [index, failure] of failures.entries()) {
      const mine = prepared.slice(index * part, (index + 1) * part);
      const handingIn = handInAll(address, mine, DEVICES);
      // Half of them are in, and the others on their way.
      await handingIn.until(Math.floor(mine.length / 2));
      if (failure === 'a site is killed') {
        const victim = index % SITES;
        sites[victim]?.kill();
        await sites[victim]?.ended;
        sites[victim] = await start();
      } else if (failure === 'connections drop') await databases.dropConnections();
      else if (failure === 'the standby is away')
        acknowledgedByOne += await databases.withoutStandby(async () => {
          // What was on both before is still being answered.
          await wait(AWAY_MS / 3);
          const before = handingIn.taken.length;
          await wait(AWAY_MS);
          return handingIn.taken.length - before;
        });
      else await databases.failOver(failure === 'the database falls silent');
      await handingIn.until(mine.length);
      taken.push(...handingIn.taken);
      askedBack += handingIn.askedBack();
    }
    const lost = await changedAnswers(address, taken);
    balancer.close();
    return await onStore(settings, async (store) => ({
      acknowledged: taken.length,
      acknowledgedByOne,
      askedBack,
      lost,
      halfWritten: await halfWritten(store),
      trailIsWhole: (await verifyAudit(store.db)).ok,
    }));
  } finally {
    await Promise.all(sites.map((site) => site.stop()));
    databases.stop();
    await rm(folder, { recursive: true, force: true, maxRetries: 20 });
  }
}

async function startDatabases() {
  const all = [await startPostgres()];
  let first = all[0] as PostgresServer;
  const floating: FloatingAddress = await openFloatingAddress(first.port);
  let standby = await startStandby(first);
  all.push(standby);
  const url = new URL(first.address);
  url.port = String(floating.port);
  return {
    url: url.href,
    dropConnections: () =>
      ask(
        first.address,
        "select pg_terminate_backend(pid) from pg_stat_activity where backend_type = 'client backend' and pid <> pg_backend_pid()",
      ),
    /** Has the standby away during some work. */
    withoutStandby: async <T>(work: () => Promise<T>): Promise<T> => {
      standby.crash();
      const result = await work();
      standby.start();
      return result;
    },
    /** As an operator does: the one that failed is cut off, the standby takes its place and its address, and gets a standby of its own. */
    failOver: async (silently: boolean) => {
      if (silently) floating.fallSilent();
      first.crash();
      await wait(WITHOUT_MS);
      standby.promote();
      first = standby;
      floating.moveTo(first.port);
      standby = await startStandby(first);
      all.push(standby);
    },
    stop: () => {
      floating.close();
      for (const server of all) server.stop();
    },
  };
}
