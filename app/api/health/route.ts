import { migrationsDone, SCHEMA_NUMBER } from '../../../lib/store/migrate';
import { version } from '../../../package.json';
import { guarded } from '../../access/guard';

/** A write costs a wait for the disk, and whoever watches asks often, ms. */
const WRITE_EVERY_MS = 30_000;
let written = 0;

/** For whoever watches the site: 200 when work can be stored, 503 when the database does not answer. Says nothing else. */
export const GET = guarded('GET /api/health', async ({ store, at }) => {
  if (at - written >= WRITE_EVERY_MS) {
    // A row of its own that nobody reads.
    await store.db
      .insertInto('throttle')
      .values({ key: 'health', count: 1, since: at })
      .onConflict((conflict) => conflict.column('key').doUpdateSet({ since: at }))
      .execute();
    written = at;
  }
  const done = await migrationsDone(store.db);
  const ok = done === SCHEMA_NUMBER;
  return Response.json({ ok, database: store.kind, migrations: done, version }, { status: ok ? 200 : 503 });
});
