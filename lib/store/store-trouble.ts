/**
 * The codes with which the databases say "not now" and not "never": the disk is full or will not write, another holds the lock, the
 * server is gone. SQLite's by name (better-sqlite3) and by number (node:sqlite), PostgreSQL's by class of SQLSTATE, and the network's.
 */
const NAMED =
  /^(SQLITE_(FULL|IOERR|READONLY|BUSY|LOCKED|CANTOPEN|NOMEM|CORRUPT)|E(CONN|PIPE|HOST|TIMEDOUT|NOTFOUND|AI_AGAIN|NOSPC|ROFS))/;
/** The same by SQLite's numbers: busy, locked, out of memory, read-only, input/output, corrupt, full, cannot open. */
const SQLITE_NUMBERS = [5, 6, 7, 8, 10, 11, 13, 14];
/** Connection, resources, intervention by the operator, system error, and "could not be serialized" or deadlock. */
const SQLSTATE = /^(08|53|57|58|40)[0-9A-Z]{3}$/;

/** Whether the database could not do its work just now. The asker may try again. */
export function isStoreTrouble(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  const { code, errcode } = error as { readonly code?: unknown; readonly errcode?: unknown };
  if (typeof errcode === 'number') return SQLITE_NUMBERS.includes(errcode & 255);
  if (typeof code === 'string') return NAMED.test(code) || SQLSTATE.test(code);
  // The pool of connections says it in words only.
  return /timeout exceeded when trying to connect|Connection terminated|Query read timeout/.test(
    error.message,
  );
}
