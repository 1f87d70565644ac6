import { ENGINE } from '../lib/generate/brief';
import type { RuleSetId } from '../lib/limits/limit';
import type { Graded, WallToGrade } from '../lib/store/hand-in';
import { grade, type RawMark, type Result } from './grading';
import { laidWall } from './laid-walls';
import { briefOfCode } from './walls/brief-of-code';

/**
 * Lays each wall again from the code the server kept, makes sure it is the one that was given out, and marks it. The score is the
 * mean of the walls; one that was not answered scores 0. `rules` judges by another rule set than the walls were laid for. Null when a wall no longer comes out as it
 * was: then nobody may be marked on it.
 * @throws GradingError for a mark on a part the wall has not.
 */
export function gradeWalls(walls: readonly WallToGrade[], rules: RuleSetId | null = null): Graded | null {
  const results = [];
  for (const { code, fingerprint, marks, saysSound } of walls) {
    const brief = briefOfCode(code);
    if (brief === null) return null;
    const judgedBy = rules ?? brief.rules;
    const laid = laidWall(brief, judgedBy);
    if (laid.fingerprint !== fingerprint) return null;
    const result = grade(laid.wall, judgedBy, marks as readonly RawMark[], laid.findings);
    results.push(marks.length > 0 || saysSound ? result : unanswered(result));
  }
  const total = results.reduce((sum, { score }) => sum + score, 0);
  return {
    engine: rules === null ? String(ENGINE) : `${ENGINE} by ${rules}`,
    results,
    score: results.length === 0 ? 0 : total / results.length,
  };
}

/** A wall that nobody opened leaves no mark either: that it is sound has to be said. */
function unanswered(result: Result): Result {
  return { ...result, score: 0, capped: null, answered: false };
}
