import { createHash } from 'node:crypto';
import { BriefError, ENGINE } from '../lib/generate/brief';
import { layWall } from '../lib/generate/generate';
import { parseCode } from '../lib/generate/wall-code';
import type { RuleSetId } from '../lib/limits/limit';
import type { Graded, WallToGrade } from '../lib/store/hand-in';
import { printWall } from '../lib/wall/print';
import { grade, type RawMark } from './grading';

/**
 * Lays each wall again from the code the server kept, makes sure it is the one that was given out, and marks it. The score is the
 * mean of the walls. `rules` judges by another rule set than the walls were laid for. Null when a wall no longer comes out as it
 * was: then nobody may be marked on it.
 * @throws GradingError for a mark on a part the wall has not.
 */
export function gradeWalls(walls: readonly WallToGrade[], rules: RuleSetId | null = null): Graded | null {
  const results = [];
  for (const { code, fingerprint, marks } of walls) {
    const brief = briefOf(code);
    if (brief === null) return null;
    const wall = layWall(brief);
    // The same hash as fingerprintOf, by the machine's own code: ten times faster, and a class hands in all at once.
    if (createHash('sha256').update(printWall(wall)).digest('hex').slice(0, 16) !== fingerprint) return null;
    results.push(grade(wall, rules ?? brief.rules, marks as readonly RawMark[]));
  }
  const total = results.reduce((sum, { score }) => sum + score, 0);
  return {
    engine: rules === null ? String(ENGINE) : `${ENGINE} by ${rules}`,
    results,
    score: results.length === 0 ? 0 : total / results.length,
  };
}

/** Null for a code of an engine this program no longer is. */
function briefOf(code: string) {
  try {
    return parseCode(code);
  } catch (error) {
    if (error instanceof BriefError) return null;
    throw error;
  }
}
