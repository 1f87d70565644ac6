import { useCallback, useEffect, useState } from 'react';
import type { PracticeRecord } from '../../lib/learning/record';
import { type KeptRecord, openKeptRecord } from './kept-record';

export interface ReadRecord {
  readonly record: PracticeRecord;
  readonly later: readonly unknown[];
}

/** The record of this device: null until the disk was read, 'none' where this browser keeps nothing. */
export function useKeptRecord() {
  const [read, setRead] = useState<ReadRecord | 'none' | null>(null);
  /** Does something with the record and shows what is there afterwards. False where the disk refuses. */
  const change = useCallback(async (work: (kept: KeptRecord) => Promise<void>): Promise<boolean> => {
    try {
      const kept = await openKeptRecord();
      try {
        await work(kept);
        setRead(await kept.all());
      } finally {
        kept.close();
      }
      return true;
    } catch {
      return false;
    }
  }, []);
  useEffect(() => {
    void change(async () => undefined).then((done) => {
      if (!done) setRead('none');
    });
  }, [change]);
  return { read, change };
}
