import { migrationsDone, SCHEMA_NUMBER } from '../../../lib/store/migrate';
import { version } from '../../../package.json';
import { guarded } from '../../access/guard';

/** For whoever watches the site: 200 when work can be stored, 503 when the database does not answer. Says nothing else. */
export const GET = guarded('GET /api/health', async ({ store }) => {
  const done = await migrationsDone(store.db);
  const ok = done === SCHEMA_NUMBER;
  return Response.json({ ok, database: store.kind, migrations: done, version }, { status: ok ? 200 : 503 });
});
