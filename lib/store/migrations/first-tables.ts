import { type Kysely, type SchemaModule, sql } from 'kysely';
import type { Store } from '../database';

/** Migration 1. A migration once released is never edited: the next change is a new one. */
export async function makeFirstTables(db: Kysely<never>, kind: Store['kind']): Promise<void> {
  await makeSignInTables(db.schema, kind);
  await makeGroups(db.schema);
  await makeWork(db.schema);
  await makeResults(db.schema);
  await makeAudit(db.schema);
}

/** As the sign-in library's own compileMigrations() prints them for our settings; a test asks it whether anything lacks. */
async function makeSignInTables(schema: SchemaModule, kind: Store['kind']): Promise<void> {
  const time = kind === 'sqlite' ? sql`date` : sql`timestamptz`;
  const yesNo = kind === 'sqlite' ? 'integer' : 'boolean';
  await schema
    .createTable('user')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('email', 'text', (c) => c.notNull().unique())
    .addColumn('emailVerified', yesNo, (c) => c.notNull())
    .addColumn('image', 'text')
    .addColumn('createdAt', time, (c) => c.notNull())
    .addColumn('updatedAt', time, (c) => c.notNull())
    .addColumn('role', 'text', (c) => c.notNull())
    .execute();
  await schema
    .createTable('session')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('expiresAt', time, (c) => c.notNull())
    .addColumn('token', 'text', (c) => c.notNull().unique())
    .addColumn('createdAt', time, (c) => c.notNull())
    .addColumn('updatedAt', time, (c) => c.notNull())
    .addColumn('ipAddress', 'text')
    .addColumn('userAgent', 'text')
    .addColumn('userId', 'text', (c) => c.notNull().references('user.id').onDelete('cascade'))
    .execute();
  await schema
    .createTable('account')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('accountId', 'text', (c) => c.notNull())
    .addColumn('providerId', 'text', (c) => c.notNull())
    .addColumn('userId', 'text', (c) => c.notNull().references('user.id').onDelete('cascade'))
    .addColumn('accessToken', 'text')
    .addColumn('refreshToken', 'text')
    .addColumn('idToken', 'text')
    .addColumn('accessTokenExpiresAt', time)
    .addColumn('refreshTokenExpiresAt', time)
    .addColumn('scope', 'text')
    .addColumn('password', 'text')
    .addColumn('createdAt', time, (c) => c.notNull())
    .addColumn('updatedAt', time, (c) => c.notNull())
    .execute();
  await schema
    .createTable('verification')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('identifier', 'text', (c) => c.notNull())
    .addColumn('value', 'text', (c) => c.notNull())
    .addColumn('expiresAt', time, (c) => c.notNull())
    .addColumn('createdAt', time, (c) => c.notNull())
    .addColumn('updatedAt', time, (c) => c.notNull())
    .execute();
  await schema
    .createTable('rateLimit')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('key', 'text', (c) => c.notNull().unique())
    .addColumn('count', 'integer', (c) => c.notNull())
    .addColumn('lastRequest', 'bigint', (c) => c.notNull())
    .execute();
  await schema.createIndex('session_userId_idx').on('session').column('userId').execute();
  await schema.createIndex('account_userId_idx').on('account').column('userId').execute();
  await schema.createIndex('verification_identifier_idx').on('verification').column('identifier').execute();
}

async function makeGroups(schema: SchemaModule): Promise<void> {
  await schema
    .createTable('learning_group')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('join_code', 'text', (c) => c.notNull().unique())
    .addColumn('closed_at', 'bigint')
    .addColumn('created_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema
    .createTable('group_instructor')
    .addColumn('group_id', 'text', (c) => c.notNull().references('learning_group.id').onDelete('cascade'))
    .addColumn('user_id', 'text', (c) => c.notNull().references('user.id').onDelete('cascade'))
    .addColumn('part', 'text', (c) => c.notNull().check(sql`part in ('lead', 'co')`))
    .addPrimaryKeyConstraint('group_instructor_key', ['group_id', 'user_id'])
    .execute();
  await schema
    .createTable('learner')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('group_id', 'text', (c) => c.notNull().references('learning_group.id').onDelete('cascade'))
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('pin_hash', 'text')
    .addColumn('time_factor', 'integer', (c) => c.notNull().defaultTo(100))
    .addColumn('created_at', 'bigint', (c) => c.notNull())
    .addColumn('removed_at', 'bigint')
    .addUniqueConstraint('learner_name_in_group', ['group_id', 'name'])
    .execute();
  await schema
    .createTable('learner_session')
    .addColumn('token_hash', 'text', (c) => c.primaryKey().notNull())
    .addColumn('learner_id', 'text', (c) => c.notNull().references('learner.id').onDelete('cascade'))
    .addColumn('created_at', 'bigint', (c) => c.notNull())
    .addColumn('expires_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema
    .createTable('throttle')
    .addColumn('key', 'text', (c) => c.primaryKey().notNull())
    .addColumn('count', 'integer', (c) => c.notNull())
    .addColumn('since', 'bigint', (c) => c.notNull())
    .execute();
  await schema
    .createTable('calendar_link')
    .addColumn('token_hash', 'text', (c) => c.primaryKey().notNull())
    .addColumn('group_id', 'text', (c) => c.notNull().references('learning_group.id').onDelete('cascade'))
    .addColumn('created_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema.createIndex('learner_session_learner').on('learner_session').column('learner_id').execute();
  await schema.createIndex('group_instructor_user').on('group_instructor').column('user_id').execute();
}

async function makeWork(schema: SchemaModule): Promise<void> {
  await schema
    .createTable('set_work')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('group_id', 'text', (c) => c.notNull().references('learning_group.id').onDelete('cascade'))
    .addColumn('title', 'text', (c) => c.notNull())
    .addColumn('spec', 'text', (c) => c.notNull())
    .addColumn('secret_seed', 'text', (c) => c.notNull())
    .addColumn('state', 'text', (c) => c.notNull().check(sql`state in ('draft', 'set', 'closed')`))
    .addColumn('opens_at', 'bigint')
    .addColumn('due_at', 'bigint')
    .addColumn('grace_ms', 'bigint', (c) => c.notNull().defaultTo(0))
    .addColumn('release', 'text', (c) =>
      c.notNull().check(sql`release in ('at once', 'when due', 'by hand')`),
    )
    .addColumn('released_at', 'bigint')
    .addColumn('created_by', 'text', (c) => c.notNull())
    .addColumn('created_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema
    .createTable('attempt')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('set_work_id', 'text', (c) => c.notNull().references('set_work.id').onDelete('cascade'))
    .addColumn('learner_id', 'text', (c) => c.notNull().references('learner.id').onDelete('cascade'))
    .addColumn('number', 'integer', (c) => c.notNull().check(sql`number >= 1`))
    .addColumn('state', 'text', (c) =>
      c.notNull().check(sql`state in ('open', 'handed in', 'marked', 'released')`),
    )
    .addColumn('started_at', 'bigint', (c) => c.notNull())
    .addColumn('handed_in_at', 'bigint')
    .addColumn('late', 'integer', (c) => c.notNull().defaultTo(0))
    .addColumn('hand_in_key', 'text', (c) => c.unique())
    .addColumn('hand_in_hash', 'text')
    .addUniqueConstraint('attempt_number', ['set_work_id', 'learner_id', 'number'])
    .addCheckConstraint('attempt_open_or_not', sql`(state = 'open') = (handed_in_at is null)`)
    .execute();
  await schema
    .createTable('attempt_wall')
    .addColumn('attempt_id', 'text', (c) => c.notNull().references('attempt.id').onDelete('cascade'))
    .addColumn('place', 'integer', (c) => c.notNull().check(sql`place >= 1`))
    .addColumn('code', 'text', (c) => c.notNull())
    .addColumn('fingerprint', 'text', (c) => c.notNull())
    .addColumn('marks', 'text', (c) => c.notNull().defaultTo('[]'))
    .addColumn('readings', 'text', (c) => c.notNull().defaultTo('[]'))
    .addColumn('says_sound', 'integer', (c) => c.notNull().defaultTo(0))
    .addColumn('opened', 'text', (c) => c.notNull().defaultTo('[]'))
    .addColumn('spent_ms', 'bigint', (c) => c.notNull().defaultTo(0))
    .addPrimaryKeyConstraint('attempt_wall_key', ['attempt_id', 'place'])
    .execute();
  await schema.createIndex('set_work_group').on('set_work').column('group_id').execute();
  await schema.createIndex('attempt_learner').on('attempt').column('learner_id').execute();
}

async function makeResults(schema: SchemaModule): Promise<void> {
  await schema
    .createTable('result_version')
    .addColumn('attempt_id', 'text', (c) => c.notNull().references('attempt.id').onDelete('cascade'))
    .addColumn('version', 'integer', (c) => c.notNull().check(sql`version >= 1`))
    .addColumn('engine', 'text', (c) => c.notNull())
    .addColumn('results', 'text', (c) => c.notNull())
    .addColumn('score', 'double precision', (c) => c.notNull().check(sql`score >= 0 and score <= 1`))
    .addColumn('reason', 'text', (c) => c.notNull())
    .addColumn('made_by', 'text', (c) => c.notNull())
    .addColumn('made_at', 'bigint', (c) => c.notNull())
    .addPrimaryKeyConstraint('result_version_key', ['attempt_id', 'version'])
    .execute();
  await schema
    .createTable('override_mark')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('attempt_id', 'text', (c) => c.notNull().references('attempt.id').onDelete('cascade'))
    .addColumn('score', 'double precision', (c) => c.notNull().check(sql`score >= 0 and score <= 1`))
    .addColumn('reason', 'text', (c) => c.notNull())
    .addColumn('made_by', 'text', (c) => c.notNull())
    .addColumn('made_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema
    .createTable('comment')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('attempt_id', 'text', (c) => c.notNull().references('attempt.id').onDelete('cascade'))
    .addColumn('text', 'text', (c) => c.notNull())
    .addColumn('made_by', 'text', (c) => c.notNull())
    .addColumn('made_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema.createIndex('override_mark_attempt').on('override_mark').column('attempt_id').execute();
  await schema.createIndex('comment_attempt').on('comment').column('attempt_id').execute();
}

async function makeAudit(schema: SchemaModule): Promise<void> {
  await schema
    .createTable('audit')
    .addColumn('seq', 'integer', (c) => c.primaryKey().notNull())
    .addColumn('at', 'bigint', (c) => c.notNull())
    .addColumn('actor', 'text', (c) => c.notNull())
    .addColumn('action', 'text', (c) => c.notNull())
    .addColumn('subject', 'text', (c) => c.notNull())
    .addColumn('detail', 'text', (c) => c.notNull())
    .addColumn('previous', 'text', (c) => c.notNull())
    .addColumn('hash', 'text', (c) => c.notNull())
    .execute();
  await schema.createIndex('audit_subject').on('audit').column('subject').execute();
}
