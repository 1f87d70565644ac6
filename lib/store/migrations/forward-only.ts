import { type Kysely, sql } from 'kysely';
import type { Store } from '../database';

const WORDS = 'an attempt only moves forward';

/** The order of the states, as SQL; lib/classes/attempt-state.ts has the same for the program. */
const placeOf = (row: 'old' | 'new') =>
  `case ${row}.state when 'open' then 0 when 'handed in' then 1 when 'marked' then 2 else 3 end`;

/** Migration 4: no state goes back, and what was handed in when and under which key stays. */
export async function guardAttempts(db: Kysely<never>, kind: Store['kind']): Promise<void> {
  const same = kind === 'sqlite' ? 'is' : 'is not distinct from';
  const kept = ['handed_in_at', 'hand_in_key', 'hand_in_hash'].map(
    (name) => `new.${name} ${same} old.${name}`,
  );
  const wrong = `${placeOf('new')} < ${placeOf('old')} or (old.state <> 'open' and not (${kept.join(' and ')}))`;
  if (kind === 'sqlite') {
    await sql
      .raw(
        `create trigger attempt_forward before update on attempt when ${wrong} begin select raise(abort, '${WORDS}'); end`,
      )
      .execute(db);
    return;
  }
  await sql
    .raw(
      `create function attempt_forward() returns trigger language plpgsql as $$ begin raise exception '${WORDS}'; end $$`,
    )
    .execute(db);
  await sql
    .raw(
      `create trigger attempt_forward before update on attempt for each row when (${wrong}) execute function attempt_forward()`,
    )
    .execute(db);
}
