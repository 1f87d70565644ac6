import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inject, onTestFinished } from 'vitest';
import { openDatabase, type Store, type StoreSettings } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { ask } from '../kills/ask';
import { NOON } from './samples/sample-attempt';
import { WITH_TABLES } from './serve-postgres';

export const KINDS = ['sqlite', 'postgres'] as const;
export type Kind = (typeof KINDS)[number];

/** Settings for an empty database of its own, which is gone when the test is over. */
export function emptyDatabase(kind: Kind): Promise<StoreSettings> {
  return databaseLike('template1', kind);
}

/** As emptyDatabase; on PostgreSQL with all tables, copied from a database where they were made once. */
export function ownDatabase(kind: Kind, options = ''): Promise<StoreSettings> {
  return databaseLike(WITH_TABLES, kind, options);
}

async function databaseLike(template: string, kind: Kind, options = ''): Promise<StoreSettings> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-store-'));
  onTestFinished(() => rmSync(dataDir, { recursive: true, force: true }));
  if (kind === 'sqlite') return { dataDir, databaseUrl: null };
  const name = `wall_${randomUUID().replaceAll('-', '')}`;
  const server = inject('postgres');
  await ask(server, `create database ${name} template ${template}`);
  onTestFinished(async () => {
    await ask(server, `drop database if exists ${name} with (force)`);
  });
  return { dataDir, databaseUrl: server.replace(/\/postgres$/, `/${name}${options}`) };
}

/** An open database with all tables. */
export async function readyStore(settings: StoreSettings): Promise<Store> {
  const store = await openDatabase(settings);
  let open = true;
  const close = async () => {
    if (open) await store.close();
    open = false;
  };
  onTestFinished(close);
  await migrate(store, NOON);
  return { ...store, close };
}
