import type { CheckId } from '../inspect/finding';
import { isOfWall, type WallAttempt } from './attempt';
import type { Family } from './family';
import type { PracticeRecord } from './record';
import { standingOf } from './standing';
import { isReadRightly } from './where-you-stand';

const TEN_MINUTES = 600_000;

/** Whether ten minutes of practice that began then still run. A clock that was set back ends them. Times are ms since 1970. */
export function isRunning(began: number, now: number): boolean {
  return now >= began && now - began < TEN_MINUTES;
}

/** What was done and learnt since a time. */
export interface Learnt {
  readonly exercises: number;
  /** Walls read alone: those with a fault and those without, and how many of each were read rightly. */
  readonly faulty: { readonly walls: number; readonly right: number };
  readonly sound: { readonly walls: number; readonly right: number };
  /** Found this time, after it was missed the last time it was on a wall. */
  readonly nowFound: readonly CheckId[];
  /** Missed or misnamed this time, each once, in the order in which it was met. */
  readonly missed: readonly CheckId[];
  readonly newFamilies: readonly Family[];
  readonly newlyMastered: readonly Family[];
}

export function learntSince(record: PracticeRecord, began: number): Learnt {
  const before = record.filter(({ at }) => at < began);
  const since = record.filter(({ at }) => at >= began);
  const alone = since.filter(isOfWall).filter(({ kind }) => kind === 'full wall' || kind === 'set work');
  const shareOf = (walls: readonly WallAttempt[]) => ({
    walls: walls.length,
    right: walls.filter(isReadRightly).length,
  });
  const [was, is] = [lastOutcomes(before), lastOutcomes(since)];
  const first = standingOf(before).families;
  const families = standingOf(record).families.map((after, place) => ({ after, before: first[place] }));
  return {
    exercises: since.length,
    faulty: shareOf(alone.filter(({ faults }) => faults.length > 0)),
    sound: shareOf(alone.filter(({ faults }) => faults.length === 0)),
    nowFound: [...is].flatMap(([fault, found]) => (found && was.get(fault) === false ? [fault] : [])),
    missed: [...is].flatMap(([fault, found]) => (found ? [] : [fault])),
    newFamilies: families.flatMap(({ after, before: earlier }) =>
      isMet(after) && !(earlier && isMet(earlier)) ? [after.family] : [],
    ),
    newlyMastered: families.flatMap(({ after, before: earlier }) =>
      after.mastery.isMastered && !earlier?.mastery.isMastered ? [after.family] : [],
    ),
  };
}

/** Whether each fault was found the last time it was on a wall. */
function lastOutcomes(record: PracticeRecord): ReadonlyMap<CheckId, boolean> {
  return new Map(
    record
      .filter(isOfWall)
      .flatMap(({ faults }) => faults.map((met) => [met.fault, met.outcome === 'found'])),
  );
}

function isMet({ ways }: { readonly ways: Readonly<Record<string, number>> }): boolean {
  return Object.values(ways).some((count) => count > 0);
}
