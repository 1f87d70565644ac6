import { type DBSchema, openDB } from 'idb';
import { parseRecord as parseRounds } from '../../lib/drills/quick/quick-record';
import type { Attempt, LookAttempt } from '../../lib/learning/attempt';
import { parseAttempt } from '../../lib/learning/parse-attempt';
import { isLater, mergedRecords, type PracticeRecord } from '../../lib/learning/record';
import { doneAt } from './done-at';
import { noteRecord, ROUNDS_KEY } from './has-practised';
import { lookAttempt } from './look-attempt';

interface RecordSchema extends DBSchema {
  attempts: { key: string; value: unknown };
}

/** The practice record of this device, on its own disk. It is never sent anywhere. */
export interface KeptRecord {
  readonly all: () => Promise<{
    readonly record: PracticeRecord;
    /** What a later version of this site wrote: kept, and left as it is. */
    readonly later: readonly unknown[];
  }>;
  /** Adds what is not there yet. All of it or, where the disk is full, nothing. */
  readonly add: (attempts: PracticeRecord, later?: readonly unknown[]) => Promise<void>;
  readonly clear: () => Promise<void>;
  readonly close: () => void;
}

export async function openKeptRecord(name = 'read-the-wall practice'): Promise<KeptRecord> {
  const db = await openDB<RecordSchema>(name, 1, {
    upgrade: (made) => {
      made.createObjectStore('attempts', { keyPath: 'id' });
    },
  });
  const add: KeptRecord['add'] = async (attempts, later = []) => {
    const writing = db.transaction('attempts', 'readwrite');
    const known = new Set(await writing.store.getAllKeys());
    const fresh = [...attempts, ...later.filter(isLater)].filter(({ id }) => !known.has(id));
    await Promise.all([...fresh.map((each) => writing.store.put(each)), writing.done]);
    noteRecord(known.size + fresh.length > 0);
  };
  return {
    all: async () => {
      await add(roundsBefore());
      const kept = await db.getAll('attempts');
      const read = kept.map((loose) => ({ loose, attempt: parseAttempt(loose) }));
      return {
        record: mergedRecords(
          read.flatMap(({ attempt }): readonly Attempt[] => (attempt === null ? [] : [attempt])),
          [],
        ),
        later: read.filter(({ attempt }) => attempt === null).map(({ loose }) => loose),
      };
    },
    add,
    clear: async () => {
      localStorage.removeItem(ROUNDS_KEY);
      await db.clear('attempts');
      noteRecord(false);
    },
    close: () => db.close(),
  };
}

/** Rounds looked through before there was a record. When that was is not known: they stand under the day on which they are taken over. */
function roundsBefore(): readonly LookAttempt[] {
  const kept = parseRounds(localStorage.getItem(ROUNDS_KEY));
  return kept.kind === 'read' ? kept.rounds.map((round) => lookAttempt(round, doneAt(null))) : [];
}
