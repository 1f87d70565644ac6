import { MigrationError } from '../lib/store/migrate';
import { announceStartCode } from './accounts/start-code';
import { tellPeerAddress } from './request/peer-address';
import { log } from './server/log';
import { SettingsError, settings } from './server/settings';
import { store } from './server/store';

/**
 * Reads the settings and brings the database up to date before anybody is let in. Ends the process with plain words if it cannot.
 * Asked to end, Next takes no more requests and answers those under way; what was acknowledged is on disk already.
 */
export async function startUp(): Promise<void> {
  tellPeerAddress();
  try {
    const { databaseUrl } = settings();
    const { kind } = await store();
    await announceStartCode();
    log.info({ database: kind, from: databaseUrl === null ? 'the data directory' : 'DATABASE_URL' }, 'ready');
  } catch (error) {
    const known = error instanceof SettingsError || error instanceof MigrationError;
    process.stderr.write(`\n${known ? error.message : `The database cannot be opened: ${String(error)}`}\n`);
    process.exit(1);
  }
}
