import type { RawMark } from '../marking/mark';
import type { Store } from './database';
import type { WallToGrade } from './hand-in';
import type { AttemptTable } from './schema';
import { readStored } from './stored-json';

/** One marking of an attempt. The last one counts, unless an instructor set a mark of their own. */
export interface Marking {
  readonly version: number;
  readonly engine: string;
  readonly score: number;
  readonly reason: string;
  readonly by: string;
  readonly at: number;
}

export interface OwnMark {
  readonly score: number;
  readonly reason: string;
  readonly by: string;
  readonly at: number;
}

export interface Comment {
  readonly id: string;
  readonly text: string;
  readonly by: string;
  readonly at: number;
}

/** All that was ever said of one attempt, the oldest first. `by` is a name where one is known. */
export interface HandInRecord {
  readonly attempt: string;
  readonly learner: string;
  readonly work: string;
  readonly number: number;
  readonly state: AttemptTable['state'];
  readonly late: boolean;
  readonly handedInAt: number | null;
  readonly markings: readonly Marking[];
  readonly ownMarks: readonly OwnMark[];
  readonly comments: readonly Comment[];
}

/** The records of a learner's hand-ins, the latest first; open attempts are left out. */
export async function recordsOfLearner(db: Store['db'], learner: string): Promise<readonly HandInRecord[]> {
  const attempts = await db
    .selectFrom('attempt')
    .select(['id', 'learner_id', 'set_work_id', 'number', 'state', 'late', 'handed_in_at'])
    .where('learner_id', '=', learner)
    .where('state', '!=', 'open')
    .orderBy('handed_in_at', 'desc')
    .execute();
  if (attempts.length === 0) return [];
  const ids = attempts.map(({ id }) => id);
  const [markings, ownMarks, comments, users] = await Promise.all([
    db
      .selectFrom('result_version')
      .select(['attempt_id', 'version', 'engine', 'score', 'reason', 'made_by', 'made_at'])
      .where('attempt_id', 'in', ids)
      .orderBy('version')
      .execute(),
    db
      .selectFrom('override_mark')
      .selectAll()
      .where('attempt_id', 'in', ids)
      .orderBy('made_at')
      .orderBy('id')
      .execute(),
    db
      .selectFrom('comment')
      .selectAll()
      .where('attempt_id', 'in', ids)
      .orderBy('made_at')
      .orderBy('id')
      .execute(),
    db.selectFrom('user').select(['id', 'name']).execute(),
  ]);
  const names = new Map(users.map(({ id, name }) => [`user ${id}`, name]));
  const made = (row: { made_by: string; made_at: number }) => ({
    by: names.get(row.made_by) ?? row.made_by,
    at: row.made_at,
  });
  return attempts.map((attempt) => {
    const own = <T extends { attempt_id: string }>(rows: readonly T[]) =>
      rows.filter((row) => row.attempt_id === attempt.id);
    return {
      attempt: attempt.id,
      learner: attempt.learner_id,
      work: attempt.set_work_id,
      number: attempt.number,
      state: attempt.state,
      late: attempt.late === 1,
      handedInAt: attempt.handed_in_at,
      markings: own(markings).map(({ version, engine, score, reason, ...row }) => ({
        version,
        engine,
        score,
        reason,
        ...made(row),
      })),
      ownMarks: own(ownMarks).map(({ score, reason, ...row }) => ({ score, reason, ...made(row) })),
      comments: own(comments).map(({ id, text, ...row }) => ({ id, text, ...made(row) })),
    };
  });
}

/** What an attempt was handed in with, wall by wall: to mark it again. */
export async function handedWalls(db: Store['db'], attempt: string): Promise<readonly WallToGrade[]> {
  const rows = await db
    .selectFrom('attempt_wall')
    .selectAll()
    .where('attempt_id', '=', attempt)
    .orderBy('place')
    .execute();
  return rows.map((row) => ({
    place: row.place,
    code: row.code,
    fingerprint: row.fingerprint,
    marks: readStored('marks', row.marks),
    readings: readStored('readings', row.readings),
    saysSound: row.says_sound === 1,
    opened: readStored('opened', row.opened),
    spentMs: row.spent_ms,
  }));
}

/** The attempts of a work that were handed in. */
export async function handedInTo(db: Store['db'], work: string): Promise<readonly string[]> {
  const rows = await db
    .selectFrom('attempt')
    .select('id')
    .where('set_work_id', '=', work)
    .where('state', '!=', 'open')
    .orderBy('id')
    .execute();
  return rows.map(({ id }) => id);
}

export interface PlacedHandIn {
  readonly attempt: string;
  readonly learner: string;
  readonly name: string;
  readonly code: string;
  /** As they were handed in. */
  readonly marks: readonly RawMark[];
  readonly saysSound: boolean;
}

/** What a group handed in for one wall of a work, every attempt, by name. */
export async function handInsOnWall(
  db: Store['db'],
  work: string,
  place: number,
): Promise<readonly PlacedHandIn[]> {
  const rows = await db
    .selectFrom('attempt_wall as w')
    .innerJoin('attempt as a', 'a.id', 'w.attempt_id')
    .innerJoin('learner as l', 'l.id', 'a.learner_id')
    .select(['a.id', 'a.learner_id', 'l.name', 'w.code', 'w.marks', 'w.says_sound'])
    .where('a.set_work_id', '=', work)
    .where('a.state', '!=', 'open')
    .where('l.removed_at', 'is', null)
    .where('w.place', '=', place)
    .orderBy('l.name')
    .orderBy('a.number')
    .execute();
  return rows.map((row) => ({
    attempt: row.id,
    learner: row.learner_id,
    name: row.name,
    code: row.code,
    marks: readStored('marks', row.marks),
    saysSound: row.says_sound === 1,
  }));
}

/** A code given out for a place of a work, before anybody has handed it in. */
export async function codeAtPlace(db: Store['db'], work: string, place: number): Promise<string | undefined> {
  const row = await db
    .selectFrom('attempt_wall as w')
    .innerJoin('attempt as a', 'a.id', 'w.attempt_id')
    .select('w.code')
    .where('a.set_work_id', '=', work)
    .where('w.place', '=', place)
    .limit(1)
    .executeTakeFirst();
  return row?.code;
}
