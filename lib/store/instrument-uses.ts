import { randomUUID } from 'node:crypto';
import type { Store } from './database';
import { RefusedChange } from './store-problem';
import { readStored } from './stored-json';

/** A wall of an open attempt of work that the site draws. */
export interface WallToDraw {
  readonly code: string;
  /** Units that may be lifted; null: as many as the wall itself allows. */
  readonly openingsUp: number | null;
}

/** Undefined where there is no such wall, its attempt is handed in, or its work gives walls out whole. */
export async function wallToDraw(
  { db }: Store,
  attempt: string,
  place: number,
): Promise<WallToDraw | undefined> {
  const row = await db
    .selectFrom('attempt_wall')
    .innerJoin('attempt', 'attempt.id', 'attempt_wall.attempt_id')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .select(['code', 'spec'])
    .where('attempt.id', '=', attempt)
    .where('attempt.state', '=', 'open')
    .where('place', '=', place)
    .executeTakeFirst();
  if (row === undefined || readStored('spec: offline', row.spec).offline) return undefined;
  return { code: row.code, openingsUp: readStored('spec: openings', row.spec).openingsUp };
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

export async function noteUse({ db }: Store, on: OnWall, use: InstrumentUse, at: number): Promise<void> {
  await db
    .insertInto('instrument_use')
    .values({ id: randomUUID(), attempt_id: on.attempt, place: on.place, ...use, at })
    .execute();
}

/** The units lifted off a wall so far. */
export async function liftedOff({ db }: Store, { attempt, place }: OnWall): Promise<readonly string[]> {
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

/** Lifts a unit, one that was lifted before as often as wanted. @throws RefusedChange once `most` others were lifted. */
export async function lift(store: Store, on: OnWall, part: string, most: number, at: number): Promise<void> {
  const lifted = await liftedOff(store, on);
  if (lifted.includes(part)) return;
  if (lifted.length >= most) throw new RefusedChange(`You have lifted all ${most} that you may.`);
  await noteUse(store, on, { used: 'lift', part }, at);
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
