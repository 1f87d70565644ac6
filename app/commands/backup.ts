import { existsSync } from 'node:fs';
import { BackupError, backUp, type Contents, restore } from '../../lib/store/backup';
import { openDatabase, sqliteFileIn } from '../../lib/store/database';
import { SettingsError, settings } from '../server/settings';

const USAGE = `Usage: npm run -s backup -- FILE    copies the database into FILE, also while the site runs
       npm run -s restore -- FILE   puts FILE in its place; the site has to be stopped`;

const [task, file, ...more] = process.argv.slice(2);

async function run(): Promise<string> {
  if (file === undefined || more.length > 0) throw new BackupError(USAGE);
  const { dataDir, databaseUrl } = settings();
  if (task === 'backup') {
    if (databaseUrl === null && !existsSync(sqliteFileIn(dataDir)))
      throw new BackupError(`There is no database in ${dataDir}.`);
    const store = await openDatabase({ dataDir, databaseUrl });
    try {
      return `${file} holds ${told(await backUp(store, file))}`;
    } finally {
      await store.close();
    }
  }
  if (databaseUrl !== null)
    throw new BackupError('This site keeps its data in PostgreSQL. Restore with pg_restore.');
  const { contents, kept } = await restore(file, dataDir, Date.now());
  const before = kept === null ? '' : `\nWhat was there before is kept as ${kept}`;
  return `Restored: ${told(contents)}${before}`;
}

function told({ handIns, auditEntries, auditHash }: Contents): string {
  return `${handIns} hand-ins; audit trail whole, ${auditEntries} entries, last hash ${auditHash}`;
}

try {
  process.stdout.write(`${await run()}\n`);
} catch (error) {
  if (!(error instanceof BackupError || error instanceof SettingsError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 2;
}
