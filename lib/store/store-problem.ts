export type StoreTrouble = 'full' | 'read-only' | 'busy' | 'unreachable' | 'damaged';

/** The database cannot be used just now. Nothing was written: the transaction was rolled back. */
export class StoreProblem extends Error {
  override name = 'StoreProblem';
  constructor(
    readonly trouble: StoreTrouble,
    options?: ErrorOptions,
  ) {
    super(`the database is ${trouble}`, options);
  }
}

/** SQLite's result codes, as Node's own driver gives them: `errcode`, of which the last eight bits are the kind. */
const SQLITE_NUMBERS: Readonly<Record<number, string>> = {
  5: 'SQLITE_BUSY',
  6: 'SQLITE_LOCKED',
  7: 'SQLITE_NOMEM',
  8: 'SQLITE_READONLY',
  10: 'SQLITE_IOERR',
  11: 'SQLITE_CORRUPT',
  13: 'SQLITE_FULL',
  14: 'SQLITE_CANTOPEN',
  19: 'SQLITE_CONSTRAINT',
  26: 'SQLITE_NOTADB',
  1555: 'SQLITE_CONSTRAINT_PRIMARYKEY',
  2067: 'SQLITE_CONSTRAINT_UNIQUE',
};

/** First pattern that fits the driver's code. PostgreSQL's are of five signs: 53100 disk full, 25006 read only, 57014 given up … */
const TROUBLES: readonly (readonly [RegExp, StoreTrouble])[] = [
  [/^(SQLITE_FULL|53100|ENOSPC|EDQUOT)/, 'full'],
  [/^(SQLITE_READONLY|SQLITE_CANTOPEN|25006|EROFS|EACCES|EPERM)/, 'read-only'],
  [/^(SQLITE_BUSY|SQLITE_LOCKED|SQLITE_NOMEM|40|53|55P03|57014)/, 'busy'],
  [/^(SQLITE_CORRUPT|SQLITE_NOTADB|XX00)/, 'damaged'],
  [/^(SQLITE_IOERR|55000|57P|08|58|3D000|28|ECONN|EHOST|ENOTFOUND|EAI_AGAIN|ETIMEDOUT|EPIPE)/, 'unreachable'],
];

/** The driver's own code of an error, in one spelling for both SQLite drivers; undefined for what is not from a driver. */
export function driverCodeOf(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { code, errcode } = error as { readonly code?: unknown; readonly errcode?: unknown };
  if (typeof errcode === 'number')
    return SQLITE_NUMBERS[errcode] ?? SQLITE_NUMBERS[errcode % 256] ?? `SQLITE_${errcode}`;
  if (typeof code === 'string') return code;
  // The pool of PostgreSQL connections has no codes of its own.
  return /Connection terminated|timeout exceeded when trying to connect|Query read timeout|Client has encountered a connection error/.test(
    error.message,
  )
    ? 'ECONNRESET'
    : undefined;
}

/** Turns a driver's error into a StoreProblem where it says the database cannot be used; gives any other back as it is. */
export function asStoreProblem(error: unknown): unknown {
  const code = driverCodeOf(error);
  const trouble = code === undefined ? undefined : TROUBLES.find(([pattern]) => pattern.test(code))?.[1];
  return trouble === undefined ? error : new StoreProblem(trouble, { cause: error });
}

/** Whether two rows may not have the same value there: 23505 on PostgreSQL. */
export function isTaken(error: unknown): boolean {
  return /^(SQLITE_CONSTRAINT_(UNIQUE|PRIMARYKEY)|23505)/.test(driverCodeOf(error) ?? '');
}

/** Whether another process writes to the SQLite file: nothing was begun. */
export function isBusyFile(error: unknown): boolean {
  return /^SQLITE_BUSY/.test(driverCodeOf(error) ?? '');
}

/** A change that is not made; the message is for whoever asked for it. */
export class RefusedChange extends Error {
  override name = 'RefusedChange';
}
