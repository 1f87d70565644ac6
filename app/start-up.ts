import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { sqliteFileIn } from '../lib/store/database';
import { MigrationError } from '../lib/store/migrate';
import { asStoreProblem, StoreProblem } from '../lib/store/store-problem';
import { announceStartCode } from './accounts/start-code';
import { tellPeerAddress } from './request/peer-address';
import { keepFiles } from './server/kept-files';
import { log } from './server/log';
import { SettingsError, settings } from './server/settings';
import { store } from './server/store';

/**
 * Reads the settings and brings the database up to date before anybody is let in. Ends the process with plain words if it cannot.
 * A page maker (app/serve) comes after the first process, which has told the rest.
 */
export async function startUp(): Promise<void> {
  const isPageMaker = process.env.PAGE_MAKER !== undefined;
  if (!isPageMaker) tellPeerAddress();
  try {
    const { databaseUrl } = settings();
    const { kind } = await store();
    keepWalls();
    if (isPageMaker) return;
    await announceStartCode();
    if (databaseUrl !== null && !process.env.SECRET)
      log.warn('SECRET is not set: where several machines share a database, each needs the same one');
    log.info({ database: kind, from: databaseUrl === null ? 'the data directory' : 'DATABASE_URL' }, 'ready');
  } catch (error) {
    process.stderr.write(`\n${wordsOf(error)}\n`);
    process.exit(1);
  }
}

/** What a built site has laid and measured it keeps until the next build, as files beside the data. */
function keepWalls(): void {
  if (process.env.NODE_ENV !== 'production') return;
  const built = join(/* turbopackIgnore: true */ process.cwd(), '.next', 'BUILD_ID');
  keepFiles(join(settings().dataDir, 'walls'), readFileSync(built, 'utf8').trim());
}

function wordsOf(error: unknown): string {
  if (error instanceof SettingsError || error instanceof MigrationError) return error.message;
  const problem = asStoreProblem(error);
  const { databaseUrl, dataDir } = settings();
  if (databaseUrl === null && problem instanceof StoreProblem && problem.trouble === 'damaged') {
    return `The database ${sqliteFileIn(dataDir)} is damaged, or it is no database of this site. Nothing was changed. Put your newest backup in its place: npm run restore -- FILE`;
  }
  const where = databaseUrl === null ? sqliteFileIn(dataDir) : 'at DATABASE_URL';
  return `The database ${where} cannot be opened: ${String(error)}`;
}
