import { audited, type By } from './audit';
import type { Store } from './database';

/** One due date. */
export interface DueDate {
  readonly work: string;
  readonly title: string;
  readonly dueAt: number;
  readonly createdAt: number;
  /** Grows with each recorded change of the work, so that a calendar takes the newer date. */
  readonly sequence: number;
}

export interface GroupCalendar {
  readonly name: string;
  readonly dates: readonly DueDate[];
}

/** Puts a new secret address in the place of a group's old one. Only the hash is kept. */
export async function replaceCalendarLink(
  store: Store,
  { tokenHash, group }: { readonly tokenHash: string; readonly group: string },
  by: By,
): Promise<void> {
  await audited(store, by, async (trx, note) => {
    await trx.deleteFrom('calendar_link').where('group_id', '=', group).execute();
    await trx
      .insertInto('calendar_link')
      .values({ token_hash: tokenHash, group_id: group, created_at: by.at })
      .execute();
    await note('calendar link made', `group ${group}`);
  });
}

/** The due dates behind a secret address; undefined when the address was never given out or has been replaced. */
export async function calendarBehind(db: Store['db'], tokenHash: string): Promise<GroupCalendar | undefined> {
  const group = await db
    .selectFrom('calendar_link as c')
    .innerJoin('learning_group as g', 'g.id', 'c.group_id')
    .select(['g.id', 'g.name'])
    .where('c.token_hash', '=', tokenHash)
    .executeTakeFirst();
  if (group === undefined) return undefined;
  const works = await db
    .selectFrom('set_work')
    .select(['id', 'title', 'due_at', 'created_at'])
    .where('group_id', '=', group.id)
    .where('state', '!=', 'draft')
    .where('due_at', 'is not', null)
    .orderBy('due_at')
    .execute();
  const changes = await db
    .selectFrom('audit')
    .select(['subject', (e) => e.fn.countAll<number | string>().as('count')])
    .where('subject', 'in', works.length === 0 ? [''] : works.map(({ id }) => `work ${id}`))
    .groupBy('subject')
    .execute();
  const counts = new Map(changes.map(({ subject, count }) => [subject, Number(count)]));
  return {
    name: group.name,
    dates: works.flatMap(({ id, title, due_at, created_at }) =>
      due_at === null
        ? []
        : {
            work: id,
            title,
            dueAt: due_at,
            createdAt: created_at,
            sequence: counts.get(`work ${id}`) ?? 0,
          },
    ),
  };
}
