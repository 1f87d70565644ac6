import { randomUUID } from 'node:crypto';
import type { Kysely, Transaction } from 'kysely';
import type { Store } from './database';
import type { Tables } from './schema';
import { RefusedChange } from './store-problem';
import { readStored } from './stored-json';

/**
 * A wall of an attempt that is still open; undefined where there is none. `offline`: it is given out whole, else the site draws what is
 * looked at. `openingsUp`: units that may be lifted, null for as many as the wall itself allows.
 */
export async function openWall(
  { db }: Store,
  attempt: string,
  place: number,
): Promise<
  { readonly code: string; readonly offline: boolean; readonly openingsUp: number | null } | undefined
> {
  const row = await db
    .selectFrom('attempt_wall')
    .innerJoin('attempt', 'attempt.id', 'attempt_wall.attempt_id')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .select(['code', 'spec'])
    .where('attempt.id', '=', attempt)
    .where('attempt.state', '=', 'open')
    .where('place', '=', place)
    .executeTakeFirst();
  return (
    row && {
      code: row.code,
      offline: readStored('spec: offline', row.spec).offline,
      openingsUp: readStored('spec: openings', row.spec).openingsUp,
    }
  );
}

/** Whether the site draws the walls of an attempt: what is handed in names parts of the bare walls then. */
export async function isSiteDrawn({ db }: Store, attempt: string): Promise<boolean> {
  const row = await db
    .selectFrom('attempt')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .select('spec')
    .where('attempt.id', '=', attempt)
    .executeTakeFirst();
  return row !== undefined && !readStored('spec: offline', row.spec).offline;
}

/** One use: of an instrument by its id, or 'lift'. */
export interface InstrumentUse {
  readonly used: string;
  readonly part: string;
}

interface OnWall {
  readonly attempt: string;
  readonly place: number;
}

/** @throws RefusedChange once the attempt is handed in. */
export async function noteUse(store: Store, on: OnWall, use: InstrumentUse, at: number): Promise<void> {
  await whileOpen(store, on, (trx) => insertUse(trx, on, use, at));
}

/**
 * Lifts a unit, one that was lifted before as often as wanted.
 * @throws RefusedChange once `most` others were lifted or the attempt is handed in.
 */
export async function lift(store: Store, on: OnWall, part: string, most: number, at: number): Promise<void> {
  await whileOpen(store, on, async (trx) => {
    const lifted = await liftedOff({ db: trx }, on);
    if (lifted.includes(part)) return;
    if (lifted.length >= most) throw new RefusedChange(`You have lifted all ${most} that you may.`);
    await insertUse(trx, on, { used: 'lift', part }, at);
  });
}

/**
 * Holds an open attempt while something on it changes. The row is written first, so that whoever comes at the same moment waits and
 * then sees the change.
 */
async function whileOpen(
  { db }: Store,
  { attempt }: OnWall,
  change: (trx: Transaction<Tables>) => Promise<void>,
): Promise<void> {
  await db.transaction().execute(async (trx) => {
    const held = await trx
      .updateTable('attempt')
      .set({ state: 'open' })
      .where('id', '=', attempt)
      .where('state', '=', 'open')
      .executeTakeFirst();
    if (held.numUpdatedRows === 0n) throw new RefusedChange('This work is handed in.');
    await change(trx);
  });
}

async function insertUse(db: Kysely<Tables>, on: OnWall, use: InstrumentUse, at: number): Promise<void> {
  await db
    .insertInto('instrument_use')
    .values({ id: randomUUID(), attempt_id: on.attempt, place: on.place, ...use, at })
    .execute();
}

/** The units lifted off a wall so far. */
export async function liftedOff(
  { db }: Pick<Store, 'db'>,
  { attempt, place }: OnWall,
): Promise<readonly string[]> {
  const rows = await db
    .selectFrom('instrument_use')
    .select('part')
    .distinct()
    .where('attempt_id', '=', attempt)
    .where('place', '=', place)
    .where('used', '=', 'lift')
    .execute();
  return rows.map(({ part }) => part);
}

/** All that was used in an attempt, in order. */
export async function usesOf(
  { db }: Pick<Store, 'db'>,
  attempt: string,
): Promise<readonly (InstrumentUse & { readonly place: number; readonly at: number })[]> {
  return db
    .selectFrom('instrument_use')
    .select(['place', 'used', 'part', 'at'])
    .where('attempt_id', '=', attempt)
    .orderBy('at')
    .orderBy('id')
    .execute();
}
