import type { TestProject } from 'vitest/node';
import { openDatabase } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { startPostgres } from '../commands/postgres.mjs';
import { ask } from '../kills/ask';
import { NOON } from './samples/sample-attempt';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of a running PostgreSQL whose databases the tests make themselves. */
    postgres: string;
  }
}

/** Name of a database with all tables and nothing in them, to be copied. */
export const WITH_TABLES = 'with_tables';

/** One server for all storage tests; each test makes a database of its own. */
export async function setup(project: TestProject): Promise<() => void> {
  const server = await startPostgres();
  await ask(server.address, `create database ${WITH_TABLES}`);
  const databaseUrl = server.address.replace(/\/postgres$/, `/${WITH_TABLES}`);
  const store = await openDatabase({ dataDir: '', databaseUrl });
  await migrate(store, NOON);
  await store.close();
  project.provide('postgres', server.address);
  return () => server.stop();
}
