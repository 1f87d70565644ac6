/** Names that begin so are of set work: kept on the device, for a phone may be off for a week. All else is kept in this tab. */
export const SET_WORK_NAME = 'set-work ';

/** Text kept where a reload or a way back does not lose it. Null where nothing is kept, or where storage is forbidden. */
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
