import { type Kysely, sql } from 'kysely';
import type { Store } from '../database';

interface Guard {
  readonly table: string;
  readonly event: 'update' | 'delete';
  readonly words: string;
}

/** A result goes when its learner asks to be deleted, so only changing one is refused. */
const GUARDS: readonly Guard[] = [
  { table: 'audit', event: 'update', words: 'the audit trail is only added to' },
  { table: 'audit', event: 'delete', words: 'the audit trail is only added to' },
  { table: 'result_version', event: 'update', words: 'a result is never changed, a new version is added' },
];

/** Migration 2: the database itself refuses to change what must stay. */
export async function guardAppendOnly(db: Kysely<never>, kind: Store['kind']): Promise<void> {
  for (const { table, event, words } of GUARDS) {
    const name = `${table}_no_${event}`;
    if (kind === 'sqlite') {
      await sql
        .raw(`create trigger ${name} before ${event} on ${table} begin select raise(abort, '${words}'); end`)
        .execute(db);
      continue;
    }
    await sql
      .raw(
        `create function ${name}() returns trigger language plpgsql as $$ begin raise exception '${words}'; end $$`,
      )
      .execute(db);
    await sql
      .raw(`create trigger ${name} before ${event} on ${table} for each row execute function ${name}()`)
      .execute(db);
  }
  if (kind === 'postgres') {
    await sql
      .raw('create trigger audit_no_truncate before truncate on audit execute function audit_no_delete()')
      .execute(db);
  }
}
