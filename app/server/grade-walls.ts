import { briefOfCode } from '../../lib/exercise/brief-of-code';
import { grade } from '../../lib/exercise/grade';
import type { Graded, Result } from '../../lib/exercise/result';
import { ENGINE } from '../../lib/generate/brief';
import type { RuleSetId } from '../../lib/limits/limit';
import type { RawMark } from '../../lib/marking/mark';
import { laidWall } from './laid-walls';

/** A wall that was handed in, as far as grading looks at it. */
export interface WallToGrade {
  readonly code: string;
  /** Of the wall that was given out. */
  readonly fingerprint: string;
  readonly marks: readonly RawMark[];
  readonly saysSound: boolean;
}

/**
 * Lays each wall again from the code the server kept, makes sure it is the one that was given out, and grades it. The score is the
 * mean of the walls; one that was not answered scores 0. `rules` judges by another rule set than the walls were laid for. Null when a
 * wall no longer comes out as it was: then nobody may be graded on it.
 * @throws GradingError for a mark on a part the wall does not have.
 */
export function gradeWalls(walls: readonly WallToGrade[], rules: RuleSetId | null = null): Graded | null {
  const results: Result[] = [];
  for (const { code, fingerprint, marks, saysSound } of walls) {
    const brief = briefOfCode(code);
    if (brief === null) return null;
    const laid = laidWall(brief, rules ?? brief.rules);
    if (laid.fingerprint !== fingerprint) return null;
    const result = grade(laid, marks);
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
