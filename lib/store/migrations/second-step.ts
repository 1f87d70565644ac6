import { type Kysely, sql } from 'kysely';
import type { Store } from '../database';

/**
 * Migration 5: the second step of signing in, as the sign-in library's own compileMigrations() prints it for our settings; when the
 * last try at a secret was; on which device a learner signed in.
 */
export async function makeSecondStep({ schema }: Kysely<never>, kind: Store['kind']): Promise<void> {
  const time = kind === 'sqlite' ? sql`date` : sql`timestamptz`;
  const yesNo = kind === 'sqlite' ? 'integer' : 'boolean';
  await schema.alterTable('user').addColumn('twoFactorEnabled', yesNo).execute();
  await schema
    .createTable('twoFactor')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('secret', 'text', (c) => c.notNull())
    .addColumn('backupCodes', 'text', (c) => c.notNull())
    .addColumn('userId', 'text', (c) => c.notNull().references('user.id').onDelete('cascade'))
    .addColumn('verified', yesNo)
    .addColumn('failedVerificationCount', 'integer')
    .addColumn('lockedUntil', time)
    .execute();
  await schema.createIndex('twoFactor_secret_idx').on('twoFactor').column('secret').execute();
  await schema.createIndex('twoFactor_userId_idx').on('twoFactor').column('userId').execute();
  await schema
    .alterTable('throttle')
    .addColumn('last', 'bigint', (c) => c.notNull().defaultTo(0))
    .execute();
  await schema
    .alterTable('learner_session')
    .addColumn('device', 'text', (c) => c.notNull().defaultTo(''))
    .execute();
}
