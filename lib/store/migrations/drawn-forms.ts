import type { Kysely } from 'kysely';

/** Walls of first attempts, drawn when the work is published: a whole college may begin in one minute. Goes with its work and its learner. */
export async function makeDrawnForms(db: Kysely<never>): Promise<void> {
  await db.schema
    .createTable('drawn_form')
    .addColumn('set_work_id', 'text', (c) => c.notNull().references('set_work.id').onDelete('cascade'))
    .addColumn('learner_id', 'text', (c) => c.notNull().references('learner.id').onDelete('cascade'))
    .addColumn('walls', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('drawn_form_key', ['set_work_id', 'learner_id'])
    .execute();
  await db.schema.createIndex('drawn_form_learner').on('drawn_form').column('learner_id').execute();
}
