import type { Store } from './database';

/** What an address or a body may name by its id, and what therefore has to belong to the person who asks. */
export const RECORDS = ['group', 'work', 'learner', 'attempt'] as const;
export type RecordKind = (typeof RECORDS)[number];

export type NamedRecords = Readonly<Partial<Record<RecordKind, string>>>;

export interface RecordOwner {
  readonly groupId: string;
  /** Whose attempts and learner records these are: none when only a group or a work is named. */
  readonly learnerIds: readonly string[];
}

/** To which one group all named records belong; undefined when one does not exist or they lie in different groups. */
export async function recordOwnerOf(db: Store['db'], named: NamedRecords): Promise<RecordOwner | undefined> {
  const groups: string[] = [];
  const learnerIds: string[] = [];
  for (const kind of RECORDS) {
    const id = named[kind];
    if (id === undefined) continue;
    const found = await homeOf(db, kind, id);
    if (!found) return undefined;
    groups.push(found.groupId);
    if (found.learnerId) learnerIds.push(found.learnerId);
  }
  const [groupId] = groups;
  if (groupId === undefined || groups.some((each) => each !== groupId)) return undefined;
  return { groupId, learnerIds };
}

interface Home {
  readonly groupId: string;
  readonly learnerId?: string;
}

async function homeOf(db: Store['db'], kind: RecordKind, id: string): Promise<Home | undefined> {
  switch (kind) {
    case 'group':
      return db.selectFrom('learning_group').select('id as groupId').where('id', '=', id).executeTakeFirst();
    case 'work':
      return db.selectFrom('set_work').select('group_id as groupId').where('id', '=', id).executeTakeFirst();
    case 'learner':
      return db
        .selectFrom('learner')
        .select(['group_id as groupId', 'id as learnerId'])
        .where('id', '=', id)
        .executeTakeFirst();
    case 'attempt':
      return db
        .selectFrom('attempt')
        .innerJoin('set_work', 'set_work.id', 'attempt.set_work_id')
        .select(['set_work.group_id as groupId', 'attempt.learner_id as learnerId'])
        .where('attempt.id', '=', id)
        .executeTakeFirst();
    default:
      return kind satisfies never;
  }
}

/** An instructor's part in a group; undefined when it is not theirs. */
export async function partIn(
  db: Store['db'],
  groupId: string,
  userId: string,
): Promise<'lead' | 'co' | undefined> {
  const row = await db
    .selectFrom('group_instructor')
    .select('part')
    .where('group_id', '=', groupId)
    .where('user_id', '=', userId)
    .executeTakeFirst();
  return row?.part;
}
