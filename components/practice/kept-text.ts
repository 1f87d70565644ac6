/** Text kept in this tab: a reload or a way back loses nothing. Null where nothing is kept, or where storage is forbidden. */
export function readKept(key: string): string | null {
  try {
    return sessionStorage.getItem(key);
  } catch {
    return null; // Storage is forbidden here: the work lasts as long as the page.
  }
}

export function keepText(key: string, text: string): void {
  try {
    sessionStorage.setItem(key, text);
  } catch {
    // As above.
  }
}
