import type { Attempt } from '../../lib/learning/attempt';
import { openKeptRecord } from './kept-record';

/** Puts an attempt into the record of this device. Where the browser keeps nothing, it is lost, and the page goes on. */
export async function addAttempt(attempt: Attempt): Promise<void> {
  try {
    const kept = await openKeptRecord();
    await kept.add([attempt]);
    kept.close();
  } catch {
    // A private window, or a full disk: the record's own page says so.
  }
}
