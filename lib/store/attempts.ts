import { randomUUID } from 'node:crypto';
import type { AttemptState } from '../classes/attempt-state';
import { beginProblem } from '../classes/may-begin';
import type { Result } from '../exercise/result';
import { parseResults } from '../exercise/stored-results';
import type { RawMark } from '../marking/mark';
import { audited } from './audit';
import type { Store } from './database';
import { handedWalls } from './hand-in-record';
import { receiptOf } from './receipt';
import { type WorkRow, workOf } from './set-work';
import { asStoreProblem, isTaken, RefusedChange } from './store-problem';

export interface GivenWall {
  /** From 1. */
  readonly place: number;
  readonly code: string;
  readonly fingerprint: string;
}

export interface AttemptRow {
  readonly id: string;
  readonly number: number;
  readonly state: AttemptState;
  readonly startedAt: number;
  readonly handedInAt: number | null;
  readonly late: boolean;
  /** Null before hand-in. */
  readonly receipt: string | null;
}

/**
 * Opens the learner's next attempt on a set work, with the walls `lay` gives for its number, or gives the one that is open already.
 * @throws RefusedChange when none may begin now.
 */
export async function openAttempt(
  store: Store,
  { work, learner }: { readonly work: string; readonly learner: string },
  lay: (work: WorkRow, number: number) => Promise<readonly GivenWall[]>,
  at: number,
): Promise<AttemptRow> {
  const row = await workOf(store, work);
  const attempts = await attemptsOf(store, work, learner);
  const open = attempts.find(({ state }) => state === 'open');
  if (open) return open;
  const problem =
    (await groupProblem(store, row.groupId)) ?? beginProblem(row, attempts.length, row.spec.attempts, at);
  if (problem !== null) throw new RefusedChange(problem);
  const number = attempts.length + 1;
  const walls = await lay(row, number);
  try {
    await write(store, { id: randomUUID(), work, learner, number, at }, walls);
  } catch (error) {
    // Tapped twice, or in two tabs: the other one was faster, and its attempt is the one.
    if (!isTaken(error)) throw asStoreProblem(error);
  }
  const opened = (await attemptsOf(store, work, learner)).find((each) => each.number === number);
  if (!opened) throw new RefusedChange('This work could not be opened. Try again.');
  return opened;
}

async function groupProblem({ db }: Store, group: string): Promise<string | null> {
  const row = await db
    .selectFrom('learning_group')
    .select('closed_at')
    .where('id', '=', group)
    .executeTakeFirst();
  return row?.closed_at == null ? null : 'This group is closed. Ask your instructor.';
}

async function write(
  store: Store,
  made: {
    readonly id: string;
    readonly work: string;
    readonly learner: string;
    readonly number: number;
    readonly at: number;
  },
  walls: readonly GivenWall[],
): Promise<void> {
  const { id, work, learner, number, at } = made;
  await audited(store, { actor: `learner ${learner}`, at }, async (trx, note) => {
    await trx
      .insertInto('attempt')
      .values({
        id,
        set_work_id: work,
        learner_id: learner,
        number,
        state: 'open',
        started_at: at,
        handed_in_at: null,
        late: 0,
        hand_in_key: null,
        hand_in_hash: null,
      })
      .execute();
    await trx
      .insertInto('attempt_wall')
      .values(
        walls.map((wall) => ({
          ...wall,
          attempt_id: id,
          marks: '[]',
          readings: '[]',
          says_sound: 0 as const,
          opened: '[]',
          spent_ms: 0,
        })),
      )
      .execute();
    await note('began an attempt', `attempt ${id}`, { work, number });
  });
}

/** A learner's attempts on a set work, in the order they were begun. */
export async function attemptsOf(
  { db }: Store,
  work: string,
  learner: string,
): Promise<readonly AttemptRow[]> {
  const rows = await db
    .selectFrom('attempt')
    .selectAll()
    .where('set_work_id', '=', work)
    .where('learner_id', '=', learner)
    .orderBy('number')
    .execute();
  return rows.map((row) => ({
    id: row.id,
    number: row.number,
    state: row.state,
    startedAt: row.started_at,
    handedInAt: row.handed_in_at,
    late: row.late === 1,
    receipt: row.hand_in_key === null ? null : receiptOf(row.id, row.hand_in_key, row.hand_in_hash ?? ''),
  }));
}

export interface AttemptWall extends GivenWall {
  readonly marks: readonly RawMark[];
  readonly saysSound: boolean;
  readonly opened: readonly string[];
  readonly readings: readonly unknown[];
}

export async function wallsOf({ db }: Store, attempt: string): Promise<readonly AttemptWall[]> {
  return await handedWalls(db, attempt);
}

export interface LearnerWork {
  readonly work: WorkRow;
  readonly attempts: readonly AttemptRow[];
}

/** What a learner's group was set, drafts left out: what is due first comes first, what has no date last. */
export async function workForLearner(
  store: Store,
  group: string,
  learner: string,
): Promise<readonly LearnerWork[]> {
  const rows = await store.db
    .selectFrom('set_work')
    .select(['id', 'due_at'])
    .where('group_id', '=', group)
    .where('state', '!=', 'draft')
    .execute();
  rows.sort((a, b) => (a.due_at ?? Number.MAX_SAFE_INTEGER) - (b.due_at ?? Number.MAX_SAFE_INTEGER));
  return Promise.all(
    rows.map(async ({ id }) => ({
      work: await workOf(store, id),
      attempts: await attemptsOf(store, id, learner),
    })),
  );
}

/** The newest result of an attempt, one entry a place. Null before it is graded. */
export async function resultOf(
  { db }: Store,
  attempt: string,
): Promise<{ readonly score: number; readonly results: readonly Result[] } | null> {
  const row = await db
    .selectFrom('result_version')
    .select(['score', 'results'])
    .where('attempt_id', '=', attempt)
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (!row) return null;
  const own = await db
    .selectFrom('override_mark')
    .select('score')
    .where('attempt_id', '=', attempt)
    .orderBy('made_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
  return { score: own?.score ?? row.score, results: parseResults(row.results) };
}

/** What the instructor wrote about an attempt, the oldest first. */
export async function commentsOf({ db }: Store, attempt: string): Promise<readonly string[]> {
  const rows = await db
    .selectFrom('comment')
    .select('text')
    .where('attempt_id', '=', attempt)
    .orderBy('made_at')
    .orderBy('id')
    .execute();
  return rows.map(({ text }) => text);
}

/** Percent of the time others get. */
export async function timeFactorOf({ db }: Store, learner: string): Promise<number> {
  const row = await db
    .selectFrom('learner')
    .select('time_factor')
    .where('id', '=', learner)
    .executeTakeFirstOrThrow();
  return row.time_factor;
}
