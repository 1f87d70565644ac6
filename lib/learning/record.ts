import { isRecord, readJson } from '../json/read-json';
import type { Attempt } from './attempt';
import { parseAttempt } from './parse-attempt';

/** Every attempt of one learner, the oldest first. What is known of the learner is worked out from it, each time anew. */
export type PracticeRecord = readonly Attempt[];

/** Of the file that a record is taken away in. */
export const RECORD_VERSION = 1;
/** Under this path on every site, for good. */
export const RECORD_SCHEMA_PATH = '/practise/record/schema/practice-record-1.json';
/** More than anybody practises in a lifetime: a file that says more is not one of ours. */
const MOST_ATTEMPTS = 200_000;

/**
 * Both records as one: each attempt once, in order of time. It does not matter which is named first, nor how often they are merged.
 * The clock orders them, wrong as it may be; attempts of one moment go by their ids.
 */
export function mergedRecords(a: PracticeRecord, b: PracticeRecord): PracticeRecord {
  const byId = new Map<string, Attempt>();
  for (const attempt of [...a, ...b]) {
    const other = byId.get(attempt.id);
    if (other === undefined || isAfter(attempt, other)) byId.set(attempt.id, attempt);
  }
  return [...byId.values()].sort((one, other) => (isAfter(one, other) ? 1 : isAfter(other, one) ? -1 : 0));
}

function isAfter(one: Attempt, other: Attempt): boolean {
  if (one.at !== other.at) return one.at > other.at;
  if (one.id !== other.id) return one.id > other.id;
  return JSON.stringify(one) > JSON.stringify(other);
}

/** The record as a file. `loose` are attempts of later versions, as they were found: they are taken along. */
export function formatRecord(record: PracticeRecord, loose: readonly unknown[] = []): string {
  return JSON.stringify({
    $schema: RECORD_SCHEMA_PATH,
    recordVersion: RECORD_VERSION,
    attempts: [...record, ...loose],
  });
}

export type ReadRecord =
  | {
      readonly kind: 'read';
      readonly attempts: PracticeRecord;
      /** Attempts that a later version wrote, as they stand: to be kept, and left as they are. */
      readonly later: readonly unknown[];
    }
  | { readonly kind: 'refused'; readonly why: string };

/** Reads a file back. A file with one attempt that is broken is refused whole, so that nobody believes all of it was taken in. */
export function parseRecord(text: string): ReadRecord {
  const loose = readJson(text);
  if (loose === undefined) return refused('it is not a JSON file');
  if (!isRecord(loose) || !('recordVersion' in loose)) return refused('it is not a practice record');
  if (loose.recordVersion !== RECORD_VERSION) {
    return refused(
      `it says version ${String(loose.recordVersion).slice(0, 20)}, and this page reads version 1`,
    );
  }
  if (!Array.isArray(loose.attempts)) return refused('attempts: missing');
  if (loose.attempts.length > MOST_ATTEMPTS) return refused(`attempts: more than ${MOST_ATTEMPTS}`);
  const attempts: Attempt[] = [];
  const later: unknown[] = [];
  for (const [index, each] of loose.attempts.entries()) {
    const attempt = parseAttempt(each);
    if (attempt !== null) attempts.push(attempt);
    else if (isLater(each)) later.push(each);
    else return refused(`attempts.${index}: is not an attempt`);
  }
  return { kind: 'read', attempts: mergedRecords(attempts, []), later };
}

/** Whether a later version of this program wrote it. */
export function isLater(loose: unknown): loose is { readonly id: string; readonly version: number } {
  if (!isRecord(loose) || typeof loose.id !== 'string' || loose.id === '') return false;
  return typeof loose.version === 'number' && Number.isInteger(loose.version) && loose.version > 1;
}

function refused(why: string): ReadRecord {
  return { kind: 'refused', why };
}
