import { type GroupMark, type Heat, heatOf } from '../../lib/classes/statistics/heat-map';
import { briefOfCode } from '../../lib/exercise/brief-of-code';
import { SLACK } from '../../lib/exercise/grade';
import type { Key } from '../../lib/exercise/key';
import { GradingError, placeMarks } from '../../lib/exercise/place-marks';
import type { Finding } from '../../lib/inspect/finding';
import { canMean } from '../../lib/marking/place';
import type { PlacedHandIn } from '../../lib/store/hand-in-record';
import { namesOf } from '../../lib/wall/part-names';
import { laidWall } from '../server/laid-walls';

/** One wall of a set work and what the group made of it. */
export interface OpenPlace extends Key {
  readonly code: string;
  readonly handIns: readonly PlacedHandIn[];
  readonly heat: readonly Heat[];
  /** The faults that a mark on this part is taken to mean. */
  readonly thereAt: (part: string) => readonly Finding[];
  readonly nameOf: (part: string) => string;
}

/** The codes handed in for a place, the one with most learners first: more than one where each has a wall of their own, or tried again. */
export function codesOf(handIns: readonly PlacedHandIn[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const { code } of handIns) counts.set(code, (counts.get(code) ?? 0) + 1);
  return [...counts].sort(([, a], [, b]) => b - a).map(([code]) => code);
}

/** Lays the wall of a code and counts where those who had it marked it; null when it comes out otherwise here. */
export function openPlace(code: string, all: readonly PlacedHandIn[]): OpenPlace | null {
  try {
    return laidPlace(code, all);
  } catch (error) {
    // Marks that mean nothing on it: it came out otherwise under the same code.
    if (error instanceof GradingError) return null;
    throw error;
  }
}

function laidPlace(code: string, all: readonly PlacedHandIn[]): OpenPlace | null {
  const brief = briefOfCode(code);
  if (brief === null) return null;
  const key = laidWall(brief, brief.rules);
  const handIns = all.filter((handIn) => handIn.code === code);
  const placed = handIns.flatMap(({ learner, marks: own }) =>
    placeMarks(key.parts, own).map((mark) => ({ learner, mark })),
  );
  const marks = placed.map(({ learner, mark: { part, fault } }): GroupMark => ({ learner, part, fault }));
  return {
    ...key,
    code,
    thereAt: (id) => {
      const at = placed.find(({ mark }) => mark.part === id);
      return at ? key.findings.filter((finding) => canMean(at.mark, finding, SLACK)) : [];
    },
    handIns,
    heat: heatOf(marks, new Set(handIns.map(({ learner }) => learner)).size),
    nameOf: namesOf(key),
  };
}
