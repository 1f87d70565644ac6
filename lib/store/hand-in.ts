import { minutesFor } from '../classes/set-work';
import type { Graded } from '../exercise/result';
import { formatResults } from '../exercise/stored-results';
import type { RawMark } from '../marking/mark';
import { audited } from './audit';
import type { Store } from './database';
import { type Receipt, receiptAgain, receiptOf, sha256Of } from './receipt';
import { asStoreProblem, isTaken, StoreProblem } from './store-problem';
import { readStored } from './stored-json';

export interface HandedWall {
  readonly place: number;
  readonly fingerprint: string;
  readonly marks: readonly RawMark[];
  readonly readings: readonly unknown[];
  readonly saysSound: boolean;
  readonly opened: readonly string[];
  readonly spentMs: number;
}

/** With the code that the server gave out. */
export interface WallToGrade extends HandedWall {
  readonly code: string;
}

export interface HandIn {
  readonly attempt: string;
  /** Who hands in: somebody else's attempt is not found. */
  readonly learner: string;
  /** Made by the device, once for each hand-in, sent with every try. */
  readonly key: string;
  readonly walls: readonly HandedWall[];
  /** When it reached the server. */
  readonly at: number;
}

export type HandInRefusal = 'not found' | 'other walls' | 'key used' | 'already handed in';

/** A hand-in that is not taken; nothing was written. `earlier` is the receipt of the one that was taken before it. */
export class HandInError extends Error {
  override name = 'HandInError';
  constructor(
    readonly refusal: HandInRefusal,
    message: string,
    readonly earlier: Receipt | null = null,
  ) {
    super(message);
  }
}

/** A hand-in that waited longer for its turn is sent away to come again, ms. */
const LONGEST_WAIT_MS = 10_000;

/** What is there to be done with a hand-in: nothing, when it came before, or its walls are to be graded and written. */
export type Taken =
  | { readonly kind: 'earlier'; readonly receipt: Receipt }
  | {
      readonly kind: 'new';
      readonly walls: readonly WallToGrade[];
      readonly hash: string;
      /** When it came, by performance.now(): it waits for its turn from here on. */
      readonly since: number;
    };

/**
 * Takes a hand-in and puts the server's own wall codes to it. Nothing is written yet: grading takes long, and what it works from never
 * changes once an attempt is open.
 * @throws HandInError when it cannot be taken, StoreProblem when the database cannot be used.
 */
export async function takeHandIn(store: Store, handIn: HandIn): Promise<Taken> {
  const since = performance.now();
  try {
    const hash = hashOf(handIn);
    const earlier = await earlierReceipt(store.db, store.kind, handIn, hash);
    if (earlier !== null) return { kind: 'earlier', receipt: earlier };
    return { kind: 'new', since, hash, walls: await wallsToGrade(store.db, handIn) };
  } catch (error) {
    throw asStoreProblem(error);
  }
}

/**
 * Writes what was taken: answers, result, audit entry in one transaction, on disk before this returns. `graded` is null where the walls
 * cannot be laid again as they were: then the hand-in is kept without a result. The same key again gives the same receipt. Late ones
 * are taken and flagged.
 * @throws HandInError when it cannot be taken, StoreProblem when the database cannot be used; nothing is written then.
 */
export async function writeHandIn(
  store: Store,
  handIn: HandIn,
  { walls, hash, since }: Extract<Taken, { readonly kind: 'new' }>,
  graded: Graded | null,
): Promise<Receipt> {
  const by = { actor: `learner ${handIn.learner}`, at: handIn.at };
  const written = audited(store, by, async (trx, note) => {
    if (performance.now() - since > LONGEST_WAIT_MS) throw new StoreProblem('busy');
    const { attempt, key, at } = handIn;
    const late = await isLate(trx, attempt, at);
    const taken = await trx
      .updateTable('attempt')
      .set({
        state: graded === null ? 'handed in' : 'marked',
        handed_in_at: at,
        late: late ? 1 : 0,
        hand_in_key: key,
        hand_in_hash: hash,
      })
      .where('id', '=', attempt)
      .where('state', '=', 'open')
      .executeTakeFirst()
      .catch((error: unknown) => {
        throw isTaken(error) ? keyUsed() : error;
      });
    if (taken.numUpdatedRows === 0n) {
      // Another try of the same hand-in, or another tab, was faster.
      const earlier = await earlierReceipt(trx, store.kind, handIn, hash);
      if (earlier === null) throw new HandInError('not found', 'There is no such attempt.');
      return earlier;
    }
    for (const wall of walls) await keepWall(trx, attempt, wall);
    if (graded !== null) await keepResult(trx, handIn, graded);
    const receipt = receiptOf(attempt, key, hash);
    await note(graded === null ? 'handed in, not marked' : 'handed in', `attempt ${attempt}`, {
      receipt,
      hash,
      late,
      score: graded?.score ?? null,
    });
    return { receipt, attempt, handedInAt: at, late, replay: false };
  });
  return written.catch((error: unknown) => {
    throw asStoreProblem(error);
  });
}

async function keepWall(db: Store['db'], attempt: string, wall: WallToGrade): Promise<void> {
  await db
    .updateTable('attempt_wall')
    .set({
      marks: JSON.stringify(wall.marks),
      readings: JSON.stringify(wall.readings),
      says_sound: wall.saysSound ? 1 : 0,
      opened: JSON.stringify(wall.opened),
      spent_ms: wall.spentMs,
    })
    .where('attempt_id', '=', attempt)
    .where('place', '=', wall.place)
    .execute();
}

async function keepResult(db: Store['db'], { attempt, at }: HandIn, graded: Graded): Promise<void> {
  await db
    .insertInto('result_version')
    .values({
      attempt_id: attempt,
      version: 1,
      engine: graded.engine,
      results: formatResults(graded.results),
      score: graded.score,
      reason: 'handed in',
      made_by: 'server',
      made_at: at,
    })
    .execute();
}

/** The server's clock decides; a hand-in exactly at the end of the grace is in time. A time limit is grace added too. */
async function isLate(db: Store['db'], attempt: string, at: number): Promise<boolean> {
  const work = await db
    .selectFrom('attempt')
    .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
    .innerJoin('learner', 'learner.id', 'attempt.learner_id')
    .select(['due_at', 'grace_ms', 'spec', 'started_at', 'time_factor'])
    .where('attempt.id', '=', attempt)
    .executeTakeFirst();
  if (work === undefined) return false;
  const { minutes } = readStored('spec: minutes', work.spec);
  const allowed = minutesFor({ minutes }, work.time_factor);
  const ends = [work.due_at, allowed === null ? null : work.started_at + allowed * 60_000];
  return ends.some((end) => end !== null && at > end + work.grace_ms);
}

/** The receipt of a hand-in that has come before; null when its attempt is still open. @throws HandInError in any other case. */
async function earlierReceipt(
  db: Store['db'],
  kind: Store['kind'],
  handIn: HandIn,
  hash: string,
): Promise<Receipt | null> {
  const attempt = await db
    .selectFrom('attempt')
    .select(['id', 'state', 'handed_in_at', 'late', 'hand_in_key', 'hand_in_hash'])
    .where('id', '=', handIn.attempt)
    .where('learner_id', '=', handIn.learner)
    .executeTakeFirst();
  if (attempt === undefined) throw new HandInError('not found', 'There is no such attempt of yours.');
  if (attempt.state === 'open') return null;
  // PostgreSQL shows a commit that its standby may not have, when the connection broke while it waited for that standby. Whoever commits
  // a write of their own after it waits for both.
  if (kind === 'postgres')
    await db.updateTable('attempt').set({ late: attempt.late }).where('id', '=', attempt.id).execute();
  const earlier = receiptAgain(attempt);
  if (attempt.hand_in_key !== handIn.key) {
    throw new HandInError(
      'already handed in',
      'This attempt was handed in before. The first one counts.',
      earlier,
    );
  }
  if (attempt.hand_in_hash !== hash) throw keyUsed();
  return earlier;
}

/** Puts the server's own wall codes to what was handed in. @throws HandInError unless it is of exactly the walls given out. */
async function wallsToGrade(db: Store['db'], { attempt, walls }: HandIn): Promise<readonly WallToGrade[]> {
  const given = await db
    .selectFrom('attempt_wall')
    .select(['place', 'code', 'fingerprint'])
    .where('attempt_id', '=', attempt)
    .orderBy('place')
    .execute();
  const byPlace = new Map(walls.map((wall) => [wall.place, wall]));
  if (walls.length !== given.length || byPlace.size !== given.length) {
    throw new HandInError(
      'other walls',
      `This work has ${given.length} walls; ${walls.length} were handed in.`,
    );
  }
  return given.map(({ place, code, fingerprint }) => {
    const wall = byPlace.get(place);
    if (wall?.fingerprint !== fingerprint) {
      throw new HandInError('other walls', `walls: wall ${place} is not the one that was given out.`);
    }
    return { ...wall, code };
  });
}

function keyUsed(): HandInError {
  return new HandInError('key used', 'This key was used for another hand-in. Make a new one.');
}

function hashOf({ attempt, walls }: HandIn): string {
  return sha256Of(JSON.stringify([attempt, [...walls].sort((a, b) => a.place - b.place)]));
}
