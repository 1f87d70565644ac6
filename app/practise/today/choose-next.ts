import { openKeptRecord } from '../../../components/record/kept-record';
import { keepToday, readToday } from '../../../components/today/kept-today';
import { exerciseAddress, usualRules } from '../../../lib/drills/today/exercise';
import { whyWords } from '../../../lib/drills/today/why-words';
import { nextStep } from '../../../lib/learning/chooser';
import type { PracticeRecord } from '../../../lib/learning/record';
import { standingOf } from '../../../lib/learning/standing';
import { isRunning, type Learnt, learntSince } from '../../../lib/learning/ten-minutes';

export type Next =
  | { readonly kind: 'exercise'; readonly address: string }
  | { readonly kind: 'over'; readonly learnt: Learnt; readonly comesNext: string };

/** The exercise to go to; or, where ten minutes are over and the reader comes from one of them, what was learnt. */
export async function chooseNext(goesOn: boolean): Promise<Next> {
  const record = await readRecord();
  const now = Date.now();
  const before = readToday();
  const runs = before !== null && isRunning(before.began, now);
  const isDone = before !== null && countOf(record, before.kind) !== before.count;
  if (runs && !isDone) return { kind: 'exercise', address: before.address };
  const standing = standingOf(record);
  const step = nextStep(record, standing, now, Math.random);
  const why = whyWords(step, standing, now);
  if (goesOn && before !== null && !runs) {
    return { kind: 'over', learnt: learntSince(record, before.began), comesNext: why };
  }
  const address = exerciseAddress(step, usualRules(record), standing.seen, Math.random);
  const began = runs ? before.began : now;
  keepToday({ began, address, kind: step.kind, count: countOf(record, step.kind), why });
  return { kind: 'exercise', address };
}

/** Where the browser keeps nothing there is no record: practice begins at the beginning. */
async function readRecord(): Promise<PracticeRecord> {
  try {
    const kept = await openKeptRecord();
    try {
      return (await kept.all()).record;
    } finally {
      kept.close();
    }
  } catch {
    return [];
  }
}

function countOf(record: PracticeRecord, kind: string): number {
  return record.filter((attempt) => attempt.kind === kind).length;
}
