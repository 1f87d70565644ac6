import { beginProblem } from '../../lib/classes/may-begin';
import { isShown } from '../../lib/classes/release';
import { minutesFor } from '../../lib/classes/set-work';
import type { Result } from '../../lib/exercise/result';
import {
  type AttemptRow,
  type AttemptWall,
  attemptsOf,
  commentsOf,
  resultOf,
  timeFactorOf,
  wallsOf,
} from '../../lib/store/attempts';
import { type GivenMark, givenMarks } from '../../lib/store/book/given-marks';
import type { Store } from '../../lib/store/database';
import { type WorkRow, workOf } from '../../lib/store/set-work';

/** What a learner may see of a set work now. Nothing of the key is in it before the results are shown. */
export interface WorkToSee {
  readonly work: WorkRow;
  readonly attempts: readonly AttemptRow[];
  /** The attempt that is open, with its walls. */
  readonly open: {
    readonly attempt: AttemptRow;
    readonly walls: readonly AttemptWall[];
    readonly endsAt: number | null;
  } | null;
  /** Why no attempt can begin, or null. */
  readonly problem: string | null;
  readonly shown: boolean;
  /** The newest attempt that is handed in, when results are shown. */
  readonly result: ShownResult | null;
}

export interface ShownResult {
  readonly attempt: AttemptRow;
  readonly walls: readonly AttemptWall[];
  readonly score: number;
  /** One for each wall, in order. */
  readonly results: readonly Result[];
  readonly comments: readonly string[];
  /** Every mark it was given, the one that counts last. */
  readonly marks: readonly GivenMark[];
}

/** Undefined for a draft, which learners cannot see. */
export async function workToSee(
  store: Store,
  work: string,
  learner: string,
  at: number,
): Promise<WorkToSee | undefined> {
  const row = await workOf(store, work);
  if (row.state === 'draft') return undefined;
  const attempts = await attemptsOf(store, work, learner);
  const open = attempts.find(({ state }) => state === 'open');
  const handedIn = attempts.findLast(({ state }) => state !== 'open');
  const shown = isShown(row, at) || handedIn?.state === 'released';
  return {
    work: row,
    attempts,
    open: open
      ? {
          attempt: open,
          walls: await wallsOf(store, open.id),
          endsAt: endOf(open, row, await timeFactorOf(store, learner)),
        }
      : null,
    problem: beginProblem(row, attempts.length, row.spec.attempts, at),
    shown,
    result: shown && handedIn ? await shownResult(store, handedIn) : null,
  };
}

function endOf({ startedAt }: AttemptRow, { spec }: WorkRow, timeFactor: number): number | null {
  const minutes = minutesFor({ minutes: spec.minutes ?? null }, timeFactor);
  return minutes === null ? null : startedAt + minutes * 60_000;
}

async function shownResult(store: Store, attempt: AttemptRow): Promise<ShownResult | null> {
  const result = await resultOf(store, attempt.id);
  if (!result) return null;
  return {
    ...result,
    attempt,
    walls: await wallsOf(store, attempt.id),
    comments: await commentsOf(store, attempt.id),
    marks: await givenMarks(store, attempt.id),
  };
}
