import type { SetWorkSpec } from '../../../lib/classes/set-work';
import type { Store } from '../../../lib/store/database';
import type { InventedLearner } from './invented-answers';
import { DAY, handIn, type InventedGroup, type InventedWork, inventedId, MONDAY } from './invented-hand-ins';

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
    offline: true,
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
