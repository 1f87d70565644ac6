import { gradeWalls } from '../../app/grade-walls';
import type { SetWorkSpec } from '../../lib/classes/set-work';
import type { Brief } from '../../lib/generate/brief';
import { layWall } from '../../lib/generate/generate';
import { codeOf } from '../../lib/generate/wall-code';
import type { Store } from '../../lib/store/database';
import { type HandedWall, recordHandIn } from '../../lib/store/hand-in';
import { fingerprintOf } from '../../lib/wall/print';
import { type InventedLearner, invented, inventedMarks } from './invented-answers';

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
const DAY = 86_400_000;

/** Twelve people nobody has met, from unsure to able. */
export const INVENTED_LEARNERS: readonly InventedLearner[] = [
  'Amal Brook',
  'Bera Stone',
  'Cal Ridge',
  'Dov Marsh',
  'Edda Field',
  'Finn Holm',
  'Gul Lake',
  'Hana Moor',
  'Ivo Glen',
  'Juno Vale',
  'Kai Heath',
  'Lea Ford',
].map((name, index) => ({ name, ability: index / 4 - 1.4 }));

/** An id made of a word and numbers, in the form of a UUID. */
export function inventedId(kind: number, ...numbers: readonly number[]): string {
  const [a = 0, b = 0] = numbers;
  const hex = (value: number, digits: number) => value.toString(16).padStart(digits, '0');
  return `${hex(kind, 8)}-0000-4000-8000-${hex(a, 6)}${hex(b, 6)}`;
}

/** A group whose learners have handed in all their works through the real marking; `instructor` leads it when given. */
export async function inventGroup(
  store: Store,
  given: {
    readonly name: string;
    readonly number: number;
    readonly learners: readonly InventedLearner[];
    readonly works: readonly InventedWork[];
    readonly instructor?: string;
  },
): Promise<InventedGroup> {
  const { db } = store;
  const { name, number, learners, works, instructor } = given;
  const group = inventedId(1, number);
  await db
    .insertInto('learning_group')
    .values({ id: group, name, join_code: `INVENT${number}`, closed_at: null, created_at: MONDAY })
    .execute();
  if (instructor) {
    await db
      .insertInto('group_instructor')
      .values({ group_id: group, user_id: instructor, part: 'lead' })
      .execute();
  }
  const learnerIds = learners.map((_, l) => inventedId(2, number, l));
  for (const [l, { name }] of learners.entries()) {
    await db
      .insertInto('learner')
      .values({
        id: learnerIds[l] ?? '',
        group_id: group,
        name,
        pin_hash: null,
        time_factor: 100,
        created_at: MONDAY,
        removed_at: null,
      })
      .execute();
  }
  const workIds = works.map((_, w) => inventedId(3, number, w));
  const attempts: string[][] = [];
  for (const [w, work] of works.entries()) {
    await setWork(store, { id: workIds[w] ?? '', group, work, w });
    const own: string[] = [];
    for (const [l, learner] of learners.entries()) {
      const attempt = inventedId(4 + w, number, l);
      await handIn(store, {
        attempt,
        work: workIds[w] ?? '',
        learnerId: learnerIds[l] ?? '',
        learner,
        given: work,
        w,
        l,
      });
      own.push(attempt);
    }
    attempts.push(own);
  }
  return { group, learners: learnerIds, works: workIds, attempts };
}

async function setWork(
  { db }: Store,
  { id, group, work, w }: { id: string; group: string; work: InventedWork; w: number },
): Promise<void> {
  const spec: SetWorkSpec = {
    topics: work.topics,
    kinds: ['plain-panel'],
    walls: work.walls,
    difficulty: work.difficulty,
    rules: 'canada',
    sameForAll: work.sameForAll,
    openingsUp: null,
    minutes: null,
    lessons: [],
    questionTopics: [],
    attempts: 1,
    passMark: null,
  };
  await db
    .insertInto('set_work')
    .values({
      id,
      group_id: group,
      title: work.title,
      spec: JSON.stringify(spec),
      secret_seed: 'invented',
      state: 'set',
      opens_at: MONDAY + w * 7 * DAY,
      due_at: MONDAY + w * 7 * DAY + 4 * DAY,
      grace_ms: 0,
      release: 'by hand',
      released_at: null,
      created_by: 'server',
      created_at: MONDAY + w,
    })
    .execute();
}

async function handIn(
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
  await store.db
    .insertInto('attempt')
    .values({
      id: attempt,
      set_work_id: work,
      learner_id: learnerId,
      number: 1,
      state: 'open',
      started_at: MONDAY,
      handed_in_at: null,
      late: 0,
      hand_in_key: null,
      hand_in_hash: null,
    })
    .execute();
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
