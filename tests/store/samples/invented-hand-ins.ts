import { gradeWalls } from '../../../app/server/grade-walls';
import type { Brief } from '../../../lib/generate/brief';
import { layWall } from '../../../lib/generate/generate';
import { codeOf } from '../../../lib/generate/wall-code';
import type { Store } from '../../../lib/store/database';
import type { HandedWall } from '../../../lib/store/hand-in';
import { fingerprintOf } from '../../../lib/wall/print';
import { type InventedLearner, invented, inventedMarks } from './invented-answers';
import { recordHandIn } from './sample-attempt';

/** A set work that never was. */
export interface InventedWork {
  readonly title: string;
  readonly topics: readonly Brief['topic'][];
  readonly walls: number;
  readonly difficulty: number;
  readonly sameForAll: boolean;
}

export interface InventedGroup {
  readonly group: string;
  readonly learners: readonly string[];
  readonly works: readonly string[];
  /** By work, then by learner. */
  readonly attempts: readonly (readonly string[])[];
}

/** Monday 5 January 2026, 08:00 UTC. */
export const MONDAY = Date.UTC(2026, 0, 5, 8);
export const DAY = 86_400_000;

/** An id made of a word and numbers, in the form of a UUID. */
export function inventedId(kind: number, ...numbers: readonly number[]): string {
  const [a = 0, b = 0] = numbers;
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, '0');
  return `${hex(kind, 8)}-0000-4000-8000-${hex(a, 6)}${hex(b, 6)}`;
}

/** One more learner joins and hands in the walls of a work that is the same for all. */
export async function handInAgain(
  store: Store,
  { group, works, attempts }: InventedGroup,
  { work, name }: { readonly work: number; readonly name: string },
): Promise<void> {
  const { db } = store;
  const [like = ''] = attempts[work] ?? [];
  const [learner, attempt] = [inventedId(40, work), inventedId(41, work)];
  await db
    .insertInto('learner')
    .values({
      id: learner,
      group_id: group,
      name,
      pin_hash: null,
      time_factor: 100,
      created_at: MONDAY,
      removed_at: null,
    })
    .execute();
  await openInvented(store, { attempt, work: works[work] ?? '', learner });
  const walls = await db.selectFrom('attempt_wall').selectAll().where('attempt_id', '=', like).execute();
  await db
    .insertInto('attempt_wall')
    .values(walls.map((wall) => ({ ...wall, attempt_id: attempt })))
    .execute();
  await recordHandIn(store, {
    attempt,
    learner,
    key: attempt,
    walls: walls.map(({ place, fingerprint, marks, says_sound }) => ({
      place,
      fingerprint,
      marks: JSON.parse(marks),
      readings: [],
      saysSound: says_sound === 1,
      opened: [],
      spentMs: 60_000,
    })),
    at: MONDAY + DAY,
    grade: gradeWalls,
  });
}

async function openInvented(
  { db }: Store,
  { attempt, work, learner }: { readonly attempt: string; readonly work: string; readonly learner: string },
): Promise<void> {
  await db
    .insertInto('attempt')
    .values({
      id: attempt,
      set_work_id: work,
      learner_id: learner,
      number: 1,
      state: 'open',
      started_at: MONDAY,
      handed_in_at: null,
      late: 0,
      hand_in_key: null,
      hand_in_hash: null,
    })
    .execute();
}

/** Opens a work for an invented learner and hands it in through the real marking. */
export async function handIn(
  store: Store,
  given: {
    attempt: string;
    work: string;
    learnerId: string;
    learner: InventedLearner;
    given: InventedWork;
    w: number;
    l: number;
  },
): Promise<void> {
  const { attempt, work, learnerId, learner, w, l } = given;
  await openInvented(store, { attempt, work, learner: learnerId });
  const chance = invented(w * 1000 + l);
  const walls: HandedWall[] = [];
  for (let place = 1; place <= given.given.walls; place++) {
    const { topics, difficulty, sameForAll } = given.given;
    const seed = 100_000 * (w + 1) + place + (sameForAll ? 0 : 1000 * (l + 1));
    const topic = topics[(place - 1) % topics.length] ?? 'mixed';
    const brief: Brief = { topic, kind: 'plain-panel', difficulty, rules: 'canada', seed };
    const wall = layWall(brief);
    const fingerprint = fingerprintOf(wall);
    await store.db
      .insertInto('attempt_wall')
      .values({
        attempt_id: attempt,
        place,
        code: codeOf(brief),
        fingerprint,
        marks: '[]',
        readings: '[]',
        says_sound: 0,
        opened: '[]',
        spent_ms: 0,
      })
      .execute();
    const marks = inventedMarks(learner, wall, 'canada', chance);
    walls.push({
      place,
      fingerprint,
      marks,
      readings: [],
      saysSound: marks.length === 0,
      opened: [],
      spentMs: 60_000,
    });
  }
  await recordHandIn(store, {
    attempt,
    learner: learnerId,
    key: attempt,
    walls,
    // The last of them a day after the work was due.
    at: MONDAY + w * 7 * DAY + (l === 11 ? 5 : 2) * DAY,
    grade: gradeWalls,
  });
}
