import { openDatabase, type Store } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { settings } from './settings';

/** One a process. On `globalThis`, since `next dev` loads this file again after every change. */
const kept = globalThis as { readTheWallStore?: Promise<Store> | undefined };

/** The site's database, opened and brought up to date at first use. */
export function store(): Promise<Store> {
  kept.readTheWallStore ??= open().catch((error: unknown) => {
    // The next request tries again: the database may be back by then.
    kept.readTheWallStore = undefined;
    throw error;
  });
  return kept.readTheWallStore;
}

/** Closes it if it was opened. */
export async function closeStore(): Promise<void> {
  const opened = await kept.readTheWallStore?.catch(() => undefined);
  kept.readTheWallStore = undefined;
  await opened?.close();
}

async function open(): Promise<Store> {
  if (process.env.NEXT_PHASE === 'phase-production-build') {
    throw new Error('The database is not opened while the site is built: make this page dynamic.');
  }
  const opened = await openDatabase(settings());
  try {
    await migrate(opened, Date.now());
    return opened;
  } catch (error) {
    await opened.close();
    throw error;
  }
}
