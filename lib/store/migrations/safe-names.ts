import type { Kysely } from 'kysely';

/**
 * Migration 7: a word with which one learner alone can choose a new PIN; whether a group's code lets new names in; what is left to
 * say of work that a learner deleted after handing it in.
 */
export async function makeNamesSafe({ schema }: Kysely<never>): Promise<void> {
  await schema.alterTable('learner').addColumn('word_hash', 'text').execute();
  await schema
    .alterTable('learning_group')
    .addColumn('takes_new', 'integer', (c) => c.notNull().defaultTo(1))
    .execute();
  await schema
    .createTable('deleted_work')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('set_work_id', 'text', (c) => c.notNull().references('set_work.id').onDelete('cascade'))
    .addColumn('learner_name', 'text', (c) => c.notNull())
    .addColumn('handed_in_at', 'bigint', (c) => c.notNull())
    .addColumn('deleted_at', 'bigint', (c) => c.notNull())
    .execute();
  await schema.createIndex('deleted_work_of').on('deleted_work').column('set_work_id').execute();
}
