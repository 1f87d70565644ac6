import { sql } from 'kysely';
import type { Store } from './database';

export interface StaffRow {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly role: 'owner' | 'instructor';
  /** False from the invitation until a password is chosen. */
  readonly hasPassword: boolean;
  readonly hasSecondStep: boolean;
  readonly sessions: number;
  /** The groups they teach, by name. */
  readonly groups: readonly string[];
}

export async function ownerOf(
  db: Store['db'],
): Promise<Pick<StaffRow, 'userId' | 'hasSecondStep'> | undefined> {
  const found = await db
    .selectFrom('user')
    .select(['id as userId', 'twoFactorEnabled'])
    .where('role', '=', 'owner')
    .executeTakeFirst();
  return found && { userId: found.userId, hasSecondStep: Boolean(found.twoFactorEnabled) };
}

export async function hasOwner(db: Store['db']): Promise<boolean> {
  return (await ownerOf(db)) !== undefined;
}

/** Everybody who can sign in, the owner first, then by name. */
export async function staffList(db: Store['db']): Promise<readonly StaffRow[]> {
  const [people, passwords, sessions, groups] = await Promise.all([
    db.selectFrom('user').select(['id', 'name', 'email', 'role', 'twoFactorEnabled']).execute(),
    db.selectFrom('account').select('userId').where('password', 'is not', null).execute(),
    db
      .selectFrom('session')
      .select(['userId', (e) => e.fn.countAll<number>().as('count')])
      .groupBy('userId')
      .execute(),
    db
      .selectFrom('group_instructor')
      .innerJoin('learning_group', 'learning_group.id', 'group_instructor.group_id')
      .select(['group_instructor.user_id as userId', 'learning_group.name as name'])
      .orderBy('learning_group.name')
      .execute(),
  ]);
  return people
    .map(({ id, name, email, role, twoFactorEnabled }) => ({
      userId: id,
      name,
      email,
      role,
      hasSecondStep: Boolean(twoFactorEnabled),
      hasPassword: passwords.some(({ userId }) => userId === id),
      sessions: Number(sessions.find(({ userId }) => userId === id)?.count ?? 0),
      groups: groups.filter(({ userId }) => userId === id).map((group) => group.name),
    }))
    .sort((a, b) => Number(b.role === 'owner') - Number(a.role === 'owner') || (a.name < b.name ? -1 : 1));
}

export async function staffByEmail(
  db: Store['db'],
  email: string,
): Promise<{ readonly userId: string } | undefined> {
  return db
    .selectFrom('user')
    .select('id as userId')
    .where('email', '=', email.toLowerCase())
    .executeTakeFirst();
}

export async function staffById(
  db: Store['db'],
  userId: string,
): Promise<Pick<StaffRow, 'name' | 'email' | 'hasSecondStep'> | undefined> {
  const found = await db
    .selectFrom('user')
    .select(['name', 'email', 'twoFactorEnabled'])
    .where('id', '=', userId)
    .executeTakeFirst();
  return found && { name: found.name, email: found.email, hasSecondStep: Boolean(found.twoFactorEnabled) };
}

/** From now on the password alone signs somebody in. */
export async function dropSecondStep(db: Store['db'], userId: string): Promise<void> {
  await db.updateTable('user').set({ twoFactorEnabled: null }).where('id', '=', userId).execute();
  await db.deleteFrom('twoFactor').where('userId', '=', userId).execute();
}

/** Ends one session of somebody, or all but one. */
export async function endStaffSessions(
  db: Store['db'],
  userId: string,
  which: { readonly only: string } | { readonly except: string | undefined },
): Promise<void> {
  const theirs = db.deleteFrom('session').where('userId', '=', userId);
  await ('only' in which
    ? theirs.where('id', '=', which.only)
    : theirs.where('id', '!=', which.except ?? '')
  ).execute();
}

/** Links that somebody could still choose a password with. */
export async function forgetLinks(db: Store['db'], userId: string): Promise<void> {
  await db.deleteFrom('verification').where('value', '=', userId).execute();
}

export interface GroupInstructor {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly part: 'lead' | 'co';
}

/** Leads first. */
export async function instructorsOf(db: Store['db'], groupId: string): Promise<readonly GroupInstructor[]> {
  return db
    .selectFrom('group_instructor')
    .innerJoin('user', 'user.id', 'group_instructor.user_id')
    .select(['user.id as userId', 'user.name', 'user.email', 'group_instructor.part'])
    .where('group_instructor.group_id', '=', groupId)
    .orderBy(sql`group_instructor.part`, 'desc')
    .orderBy('user.name')
    .execute();
}

/** Makes somebody a co-instructor. A lead stays a lead. */
export async function addCoInstructor(db: Store['db'], groupId: string, userId: string): Promise<void> {
  await db
    .insertInto('group_instructor')
    .values({ group_id: groupId, user_id: userId, part: 'co' })
    .onConflict((conflict) => conflict.columns(['group_id', 'user_id']).doNothing())
    .execute();
}

/** Takes a co-instructor away; a lead is not touched, so no group is left without one. */
export async function removeCoInstructor(db: Store['db'], groupId: string, userId: string): Promise<void> {
  await db
    .deleteFrom('group_instructor')
    .where('group_id', '=', groupId)
    .where('user_id', '=', userId)
    .where('part', '=', 'co')
    .execute();
}
