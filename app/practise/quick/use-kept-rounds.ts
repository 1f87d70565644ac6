'use client';

import { useCallback, useEffect, useState } from 'react';
import {
  formatRecord,
  isCounted,
  parseRecord,
  type QuickRecord,
  type QuickRound,
  withRound,
} from '../../../lib/drills/quick/quick-record';

const KEY = 'quick-looks';

export interface KeptRounds {
  readonly rounds: QuickRecord;
  readonly text: string | null;
  readonly unknown: string | null;
  /** Adds a round, unless it was counted before or the record kept cannot be read. */
  readonly add: (round: QuickRound) => void;
  readonly wasCounted: (round: Omit<QuickRound, 'time' | 'walls'>) => boolean;
  readonly erase: () => void;
}

/** The rounds kept on this device. Where storage is forbidden they last as long as the page. */
export function useKeptRounds(): KeptRounds {
  const [text, setText] = useState<string | null>(null);
  useEffect(() => setText(readKept()), []);
  const read = parseRecord(text);
  const rounds = read.kind === 'read' ? read.rounds : [];
  const add = useCallback((round: QuickRound) => {
    // Read afresh: another tab may have added a round since.
    setText((before) => {
      const kept = parseRecord(readKept() ?? before);
      if (kept.kind === 'unknown') return before;
      const next = formatRecord(withRound(kept.rounds, round));
      keep(next);
      return next;
    });
  }, []);
  return {
    rounds,
    text,
    unknown: read.kind === 'unknown' ? read.why : null,
    add,
    wasCounted: (round) => isCounted(rounds, round),
    erase: () => {
      forget();
      setText(null);
    },
  };
}

function readKept(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

function keep(text: string): void {
  try {
    localStorage.setItem(KEY, text);
  } catch {
    // Storage is forbidden or full: the rounds last as long as the page.
  }
}

function forget(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // As above.
  }
}
