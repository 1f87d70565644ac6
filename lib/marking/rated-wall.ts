import type { Finding } from '../inspect/finding';
import { HAZARD_WEIGHT } from './hazard-weight';
import type { PlacedMark } from './mark';
import { MarkingError, requireFinite, requireNotNegative } from './marking-error';
import type { MatchResult } from './match';

/** A fault and how certain the learner was of it; null when it was not found. */
export interface RatedFault {
  readonly rating: number | null;
  /** Not negative; normalised inside the wall, so that every wall counts equally. */
  readonly weight: number;
}

/** One wall of a set as the free-response statistics see it. No faults: a sound wall. */
export interface RatedWall {
  readonly faults: readonly RatedFault[];
  /** Ratings of the marks that hit nothing. */
  readonly falseRatings: readonly number[];
}

/**
 * Turns a matched wall into ratings. 'place and name' is the strict reading: a fault counts as found only when
 * named, and a wrongly named mark is a false mark. 'place' asks for the place alone. `marks` and `findings` must
 * be the ones that were matched; throws MarkingError when their numbers differ.
 */
export function rateWall(
  findings: readonly Finding[],
  marks: readonly PlacedMark[],
  match: MatchResult,
  asks: 'place and name' | 'place',
): RatedWall {
  if (findings.length !== match.findings.length || marks.length !== match.marks.length) {
    throw new MarkingError(
      `match: ${match.findings.length} findings and ${match.marks.length} marks, ` +
        `but ${findings.length} and ${marks.length} were given`,
    );
  }
  const isStrict = asks === 'place and name';
  return {
    faults: findings.map((finding, index) => {
      const result = match.findings[index];
      const counts = result?.outcome === 'found' && (result.rightName || !isStrict);
      return { rating: counts ? result.sure : null, weight: HAZARD_WEIGHT[finding.hazard] };
    }),
    falseRatings: marks
      .filter((_, index) => {
        const outcome = match.marks[index]?.outcome;
        return outcome === 'false' || (isStrict && outcome === 'wrong name');
      })
      .map(({ sure }) => sure),
  };
}

/**
 * Throws MarkingError for a set without walls, or a wall with a rating that is not finite, a negative weight or
 * weights that are all zero.
 */
export function requireRatedWalls(walls: readonly RatedWall[]): void {
  if (walls.length === 0) throw new MarkingError('walls: none given');
  walls.forEach(({ faults, falseRatings }, w) => {
    falseRatings.forEach((rating, r) => {
      requireFinite(`walls.${w}.falseRatings.${r}`, rating);
    });
    faults.forEach(({ rating, weight }, f) => {
      if (rating !== null) requireFinite(`walls.${w}.faults.${f}.rating`, rating);
      requireNotNegative(`walls.${w}.faults.${f}.weight`, weight);
    });
    if (faults.length > 0 && faults.every(({ weight }) => weight === 0)) {
      throw new MarkingError(`walls.${w}.faults: all weights are zero`);
    }
  });
}
