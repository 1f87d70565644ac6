import { setTimeout as wait } from 'node:timers/promises';
import type { PostgresServer } from '../commands/postgres.mjs';
import { ask } from './ask';

/** A second server that follows the first, and without which the first acknowledges nothing from now on. */
export async function startStandby(first: PostgresServer): Promise<PostgresServer> {
  const standby = await first.standBy();
  await ask(first.address, "alter system set synchronous_standby_names = 'standby'");
  await ask(first.address, 'select pg_reload_conf()');
  const isFollowed = "select 1 from pg_stat_replication where sync_state = 'sync'";
  while ((await ask(first.address, isFollowed)).rowCount === 0) await wait(50);
  return standby;
}
