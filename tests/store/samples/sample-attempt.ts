import { randomUUID } from 'node:crypto';
import { setTimeout as wait } from 'node:timers/promises';
import type { Graded, Result } from '../../../lib/exercise/result';
import type { Store } from '../../../lib/store/database';
import {
  type HandedWall,
  type HandIn,
  takeHandIn,
  type WallToGrade,
  writeHandIn,
} from '../../../lib/store/hand-in';
import type { Receipt } from '../../../lib/store/receipt';
import { StoreProblem } from '../../../lib/store/store-problem';

/** When the tests play: 25 November 2026, 12:00 UTC. */
export const NOON = 1_795_608_000_000;

export interface SampleWall {
  readonly place: number;
  readonly code: string;
  readonly fingerprint: string;
}

export interface SampleAttempt {
  readonly group: string;
  readonly work: string;
  readonly learner: string;
  readonly attempt: string;
}

export const DUE = NOON + 3_600_000;
export const GRACE_MS = 60_000;

/** Two walls by name only: what is kept of a hand-in does not depend on how its walls look. */
export const SAMPLE_WALLS: readonly SampleWall[] = [1, 2].map((place) => ({
  place,
  code: `WALL-${place}`,
  fingerprint: `00000000000000a${place}`,
}));

const NOTHING = { got: 0, of: 0 };
const sampleResult = (score: number): Result => ({
  score,
  capped: null,
  findings: [],
  marks: [],
  parts: { found: NOTHING, named: NOTHING, measured: NOTHING, judged: NOTHING, acted: NOTHING },
  answered: true,
});
export const HALF: Graded = { engine: '1', results: [sampleResult(0), sampleResult(1)], score: 0.5 };

/** A group with one set work, due an hour after noon with a minute's grace. */
export async function sampleGroup({ db }: Store): Promise<Pick<SampleAttempt, 'group' | 'work'>> {
  const group = randomUUID();
  const work = randomUUID();
  await db
    .insertInto('learning_group')
    .values({ id: group, name: 'Tuesday', join_code: group.slice(0, 8), closed_at: null, created_at: NOON })
    .execute();
  await db
    .insertInto('set_work')
    .values({
      id: work,
      group_id: group,
      title: 'First walls',
      spec: '{}',
      secret_seed: 'a secret',
      state: 'set',
      opens_at: NOON,
      due_at: DUE,
      grace_ms: GRACE_MS,
      release: 'by hand',
      released_at: null,
      created_by: 'nobody',
      created_at: NOON,
    })
    .execute();
  return { group, work };
}

/** An open attempt of a new learner on the two walls. */
export async function sampleAttempt(
  store: Store,
  place?: Pick<SampleAttempt, 'group' | 'work'>,
  walls = SAMPLE_WALLS,
): Promise<SampleAttempt> {
  const { group, work } = place ?? (await sampleGroup(store));
  const learner = randomUUID();
  await store.db
    .insertInto('learner')
    .values({
      id: learner,
      group_id: group,
      name: `Learner ${learner}`,
      pin_hash: null,
      time_factor: 100,
      created_at: NOON,
      removed_at: null,
    })
    .execute();
  return { group, work, learner, attempt: await openAttempt(store, work, learner, 1, walls) };
}

export async function openAttempt(
  store: Store,
  work: string,
  learner: string,
  number: number,
  walls = SAMPLE_WALLS,
): Promise<string> {
  const id = randomUUID();
  await store.db.transaction().execute(async (trx) => {
    await trx
      .insertInto('attempt')
      .values({
        id,
        set_work_id: work,
        learner_id: learner,
        number,
        state: 'open',
        started_at: NOON,
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
  });
  return id;
}

/** What a device sends: one mark on each wall. */
export function sampleAnswers(walls = SAMPLE_WALLS): readonly HandedWall[] {
  return walls.map(({ place, fingerprint }) => ({
    place,
    fingerprint,
    marks: [{ part: 'A1.1', fault: 'proud-unit', sure: 2 }],
    readings: [],
    saysSound: false,
    opened: [],
    spentMs: 1000 * place,
  }));
}

export interface SampleHandIn extends HandIn {
  readonly grade: (walls: readonly WallToGrade[]) => Graded | null;
}

/** A hand-in on the way that the handler goes: taken, graded, written. */
export async function recordHandIn(store: Store, { grade, ...handIn }: SampleHandIn): Promise<Receipt> {
  const taken = await takeHandIn(store, handIn);
  return taken.kind === 'earlier' ? taken.receipt : writeHandIn(store, handIn, taken, grade(taken.walls));
}

/** As a device sends it: where the site has too much to do, again a little later. */
export async function recordAsDevice(store: Store, handIn: SampleHandIn): Promise<Receipt> {
  for (;;) {
    try {
      return await recordHandIn(store, handIn);
    } catch (error) {
      if (!(error instanceof StoreProblem && /^(busy|unreachable)$/.test(error.trouble))) throw error;
      await wait(100);
    }
  }
}

export function sampleHandIn(
  { attempt, learner }: Pick<SampleAttempt, 'attempt' | 'learner'>,
  changes: Partial<SampleHandIn> = {},
): SampleHandIn {
  return {
    attempt,
    learner,
    key: randomUUID(),
    walls: sampleAnswers(),
    at: NOON + 1000,
    grade: () => HALF,
    ...changes,
  };
}
