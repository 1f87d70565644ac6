/** Names with this beginning belong to set work, which is kept on the device, as a phone may be off for a week. Everything else is kept in this tab. */
export const SET_WORK_NAME = 'set-work ';

/** Text that survives a reload or going back. Null where nothing is kept, or where storage is forbidden. */
export function readKept(key: string): string | null {
  try {
    return shelfOf(key).getItem(key);
  } catch {
    return null; // Storage is forbidden here: the work lasts as long as the page.
  }
}

export function keepText(key: string, text: string): void {
  try {
    shelfOf(key).setItem(key, text);
  } catch {
    // As above.
  }
}

function shelfOf(key: string): Storage {
  return key.includes(`:${SET_WORK_NAME}`) ? localStorage : sessionStorage;
}
