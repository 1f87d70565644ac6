import { CHECKS } from '../../inspect/finding';
import { isRecord, readJson } from '../../json/read-json';
import type { PairMark } from './pair-rows';

const VERSION = 1;

/** What a reload must not lose: the wall pointed to, and the marks on it. */
export interface PairWork {
  readonly side: 1 | 2;
  readonly marks: readonly PairMark[];
}

export function formatPair(work: PairWork): string {
  return JSON.stringify({ version: VERSION, ...work });
}

/** Reads it back. Null for anything that is not work on a pair with these parts. */
export function parsePair(
  text: string | null,
  isPart: (side: 1 | 2, id: string) => boolean,
): PairWork | null {
  const loose = readJson(text);
  if (!isRecord(loose) || loose.version !== VERSION || !Array.isArray(loose.marks)) return null;
  const { side } = loose;
  if (side !== 1 && side !== 2) return null;
  const marks = loose.marks.flatMap((mark: unknown): readonly PairMark[] => {
    if (!isRecord(mark) || typeof mark.part !== 'string' || !isPart(side, mark.part)) return [];
    const fault = CHECKS.find((check) => check === mark.fault);
    return fault === undefined ? [] : [{ part: mark.part, fault }];
  });
  return marks.length === loose.marks.length ? { side, marks } : null;
}
