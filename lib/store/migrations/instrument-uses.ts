import type { Kysely } from 'kysely';

/** What a learner used on a wall that the site draws: each instrument and each unit lifted. Goes with its attempt. */
export async function makeInstrumentUses(db: Kysely<never>): Promise<void> {
  await db.schema
    .createTable('instrument_use')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('attempt_id', 'text', (c) => c.notNull().references('attempt.id').onDelete('cascade'))
    .addColumn('place', 'integer', (c) => c.notNull())
    .addColumn('used', 'text', (c) => c.notNull())
    .addColumn('part', 'text', (c) => c.notNull())
    .addColumn('at', 'bigint', (c) => c.notNull())
    .execute();
  await db.schema
    .createIndex('instrument_use_wall')
    .on('instrument_use')
    .columns(['attempt_id', 'place'])
    .execute();
}
