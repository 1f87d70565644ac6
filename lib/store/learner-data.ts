import { isShown } from '../classes/release';
import type { Store } from './database';
import { handedWalls } from './hand-in-record';
import { usesOf } from './instrument-uses';
import { learnerSessions } from './learner-sessions';
import type { AttemptTable, SetWorkTable } from './schema';

/** Writes a time, which is kept in milliseconds, as an ISO text. */
type TimeText = (at: number) => string;

/** What a learner takes away. Times are ISO texts; results are there once the learner may see them. */
export interface LearnerData {
  readonly format: 'read-the-wall learner data';
  readonly version: 1;
  readonly name: string;
  readonly group: string;
  readonly joined: string;
  readonly timeFactorPercent: number;
  readonly signedIn: readonly { readonly device: string; readonly since: string }[];
  readonly attempts: readonly unknown[];
}

/** All that is kept about a learner, except the hashes of their PIN and sessions, which are of no use to anybody. */
export async function learnerData(
  db: Store['db'],
  learnerId: string,
  at: number,
  isoOf: TimeText,
): Promise<LearnerData> {
  const learner = await db
    .selectFrom('learner')
    .innerJoin('learning_group', 'learning_group.id', 'learner.group_id')
    .select(['learner.name', 'learning_group.name as group', 'learner.created_at', 'learner.time_factor'])
    .where('learner.id', '=', learnerId)
    .executeTakeFirstOrThrow();
  const attempts = await db
    .selectFrom('attempt')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .selectAll('attempt')
    .select(['set_work.title', 'release', 'due_at', 'grace_ms', 'released_at'])
    .where('learner_id', '=', learnerId)
    .orderBy('started_at')
    .execute();
  return {
    format: 'read-the-wall learner data',
    version: 1,
    name: learner.name,
    group: learner.group,
    joined: isoOf(learner.created_at),
    timeFactorPercent: learner.time_factor,
    signedIn: (await learnerSessions(db, learnerId, at)).map(({ device, begun }) => ({
      device,
      since: isoOf(begun),
    })),
    attempts: await Promise.all(
      attempts.map(async (attempt) => ({
        work: attempt.title,
        number: attempt.number,
        state: attempt.state,
        started: isoOf(attempt.started_at),
        handedIn: attempt.handed_in_at === null ? null : isoOf(attempt.handed_in_at),
        late: attempt.late === 1,
        used: (await usesOf({ db }, attempt.id)).map(({ at: time, ...use }) => ({ ...use, at: isoOf(time) })),
        ...(mayBeSeen(attempt, at)
          ? { walls: await wallsOf(db, attempt.id), ...(await judgementsOf(db, attempt.id, isoOf)) }
          : // Codes and judgements would give away the key.
            { walls: (await wallsOf(db, attempt.id)).map(({ code: _, ...wall }) => wall) }),
      })),
    ),
  };
}

/** As on the learner's own pages. */
function mayBeSeen(
  attempt: Pick<AttemptTable, 'state'> &
    Pick<SetWorkTable, 'release' | 'due_at' | 'grace_ms' | 'released_at'>,
  at: number,
): boolean {
  const { state, release, due_at: dueAt, grace_ms: graceMs, released_at: releasedAt } = attempt;
  return state !== 'open' && isShown({ release, dueAt, graceMs, releasedAt }, at);
}

/** The hash of a wall says nothing to a learner. */
async function wallsOf(db: Store['db'], attemptId: string) {
  return (await handedWalls(db, attemptId)).map(({ fingerprint: _, ...wall }) => wall);
}

async function judgementsOf(db: Store['db'], attemptId: string, isoOf: TimeText) {
  const [results, overrides, comments] = await Promise.all([
    db
      .selectFrom('result_version')
      .selectAll()
      .where('attempt_id', '=', attemptId)
      .orderBy('version')
      .execute(),
    db
      .selectFrom('override_mark')
      .selectAll()
      .where('attempt_id', '=', attemptId)
      .orderBy('made_at')
      .execute(),
    db.selectFrom('comment').selectAll().where('attempt_id', '=', attemptId).orderBy('made_at').execute(),
  ]);
  return {
    results: results.map((result) => ({
      version: result.version,
      score: result.score,
      reason: result.reason,
      made: isoOf(result.made_at),
      walls: JSON.parse(result.results) as unknown,
    })),
    overrides: overrides.map(({ score, reason, made_at }) => ({ score, reason, made: isoOf(made_at) })),
    comments: comments.map(({ text, made_at }) => ({ text, made: isoOf(made_at) })),
  };
}
