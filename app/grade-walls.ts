import { ENGINE } from '../lib/generate/brief';
import type { RuleSetId } from '../lib/limits/limit';
import type { Graded, WallToGrade } from '../lib/store/hand-in';
import { grade, type RawMark } from './grading';
import { laidWall } from './laid-walls';
import { briefOfCode } from './walls/brief-of-code';

/**
 * Lays each wall again from the code the server kept, makes sure it is the one that was given out, and marks it. The score is the
 * mean of the walls. `rules` judges by another rule set than the walls were laid for. Null when a wall no longer comes out as it
 * was: then nobody may be marked on it.
 * @throws GradingError for a mark on a part the wall has not.
 */
export function gradeWalls(walls: readonly WallToGrade[], rules: RuleSetId | null = null): Graded | null {
  const results = [];
  for (const { code, fingerprint, marks } of walls) {
    const brief = briefOfCode(code);
    if (brief === null) return null;
    const judgedBy = rules ?? brief.rules;
    const laid = laidWall(brief, judgedBy);
    if (laid.fingerprint !== fingerprint) return null;
    results.push(grade(laid.wall, judgedBy, marks as readonly RawMark[], laid.findings));
  }
  const total = results.reduce((sum, { score }) => sum + score, 0);
  return {
    engine: rules === null ? String(ENGINE) : `${ENGINE} by ${rules}`,
    results,
    score: results.length === 0 ? 0 : total / results.length,
  };
}
