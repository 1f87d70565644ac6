import type { Kysely } from 'kysely';

/** Migration 3: the mark book reads scores by the page. Beside the long results they would cost a walk through each. */
export async function indexScores(db: Kysely<never>): Promise<void> {
  await db.schema
    .createIndex('result_version_score')
    .on('result_version')
    .columns(['attempt_id', 'version', 'score'])
    .execute();
}
