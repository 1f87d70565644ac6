import type { TestProject } from 'vitest/node';
import { startPostgres } from '../commands/postgres.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of a running PostgreSQL whose databases the tests make themselves. */
    postgres: string;
  }
}

/** One server for all storage tests; each test file makes a database of its own. */
export async function setup(project: TestProject): Promise<() => void> {
  const server = await startPostgres();
  project.provide('postgres', server.address);
  return () => server.stop();
}
