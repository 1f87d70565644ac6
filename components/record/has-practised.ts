/** Where rounds of quick looks are kept for their own page: from the time before there was a record, too. */
export const ROUNDS_KEY = 'quick-looks';
const KEY = 'has-practised';

/** Whether there is a practice record on this device: known at once, without opening it. */
export function hasPractised(): boolean {
  try {
    return localStorage.getItem(KEY) !== null || localStorage.getItem(ROUNDS_KEY) !== null;
  } catch {
    return false; // Storage is forbidden here.
  }
}

export function noteRecord(isThere: boolean): void {
  if (isThere) localStorage.setItem(KEY, 'yes');
  else localStorage.removeItem(KEY);
}
