import type { RatedWall } from './rated-wall';
import { falseAlarmShare, falseAlarmShareOfAll, foundShare, weightedFoundShare } from './set-statistics';

export type Plot = 'AFROC' | 'wAFROC' | 'AFROC1' | 'wAFROC1';

export interface OperatingPoint {
  /** Share of walls with a false mark: sound walls, or all walls for the plots ending in 1. */
  readonly x: number;
  /** Share of faults found: plain, or weighted for the plots beginning with w. */
  readonly y: number;
}

const X = {
  AFROC: falseAlarmShare,
  wAFROC: falseAlarmShare,
  AFROC1: falseAlarmShareOfAll,
  wAFROC1: falseAlarmShareOfAll,
} as const;

const Y = {
  AFROC: foundShare,
  wAFROC: weightedFoundShare,
  AFROC1: foundShare,
  wAFROC1: weightedFoundShare,
} as const;

/**
 * The plot's points from (0,0), one for each rating used, from the most certain down, to (1,1). The last stretch
 * is the straight line to (1,1) of what was never marked. Throws MarkingError as the shares do.
 */
export function operatingPoints(walls: readonly RatedWall[], plot: Plot): readonly OperatingPoint[] {
  const used = walls.flatMap(({ faults, falseRatings }) => [
    ...falseRatings,
    ...faults.flatMap(({ rating }) => (rating === null ? [] : [rating])),
  ]);
  const thresholds = [Infinity, ...[...new Set(used)].sort((a, b) => b - a)];
  const points = thresholds.map((threshold) => ({
    x: X[plot](walls, threshold),
    y: Y[plot](walls, threshold),
  }));
  return [...points, { x: 1, y: 1 }];
}

/** The points at which the line turns, and its two ends: points inside an upright or level stretch are left out. */
export function cornersOf(points: readonly OperatingPoint[]): readonly OperatingPoint[] {
  return points.filter((point, index) => {
    const before = points[index - 1];
    const after = points[index + 1];
    if (!before || !after) return true;
    const isUpright = before.x === point.x && point.x === after.x;
    const isLevel = before.y === point.y && point.y === after.y;
    return !isUpright && !isLevel;
  });
}

/** Area under the points joined by straight lines (trapezoids). */
export function areaUnder(points: readonly OperatingPoint[]): number {
  return points.reduce((area, point, index) => {
    const before = points[index - 1];
    return before ? area + ((point.x - before.x) * (point.y + before.y)) / 2 : area;
  }, 0);
}
