import { MarkingError } from './marking-error';
import { type RatedWall, requireRatedWalls } from './rated-wall';

// Free-response statistics of a set of walls, from the closed formulae in D. P. Chakraborty's FROC book (RJafroc
// FROC book, chapters "The FROC paradigm" and "Empirical plots"). A mark rated at or above a threshold counts;
// the threshold -Infinity counts every mark. All functions throw MarkingError as requireRatedWalls does, and when
// the walls that they divide by are missing.

/** NLF: marks that hit nothing, rated >= threshold, per wall, sound and faulty alike. May exceed 1. */
export function falseMarksPerWall(walls: readonly RatedWall[], threshold = -Infinity): number {
  requireRatedWalls(walls);
  return sum(walls.map((wall) => wall.falseRatings.filter((r) => r >= threshold).length)) / walls.length;
}

/** LLF: share of all faults found with a rating >= threshold, 0 to 1. */
export function foundShare(walls: readonly RatedWall[], threshold = -Infinity): number {
  const faults = faultyOf(walls).flatMap((wall) => wall.faults);
  return faults.filter(({ rating }) => rating !== null && rating >= threshold).length / faults.length;
}

/** wLLF: mean over faulty walls of the weight found with a rating >= threshold, 0 to 1. */
export function weightedFoundShare(walls: readonly RatedWall[], threshold = -Infinity): number {
  const faulty = faultyOf(walls);
  return (
    sum(
      faulty.map((wall) => weighted(wall, (rating) => (rating > -Infinity && rating >= threshold ? 1 : 0))),
    ) / faulty.length
  );
}

/** FPF: share of sound walls with a false mark rated >= threshold, 0 to 1. */
export function falseAlarmShare(walls: readonly RatedWall[], threshold = -Infinity): number {
  return alarmShare(soundOf(walls), threshold);
}

/** FPF over all walls, faulty ones too: the x of AFROC1 and wAFROC1. */
export function falseAlarmShareOfAll(walls: readonly RatedWall[], threshold = -Infinity): number {
  requireRatedWalls(walls);
  return alarmShare(walls, threshold);
}

/** Area under the AFROC: chance that a fault is rated above every mark on a sound wall. Silence gives 0.5. */
export function afrocArea(walls: readonly RatedWall[]): number {
  return faultArea(walls, soundOf(walls));
}

/** Area under the AFROC1: as afrocArea, against the false marks of all walls. */
export function afroc1Area(walls: readonly RatedWall[]): number {
  return faultArea(walls, walls);
}

/** Area under the weighted AFROC: every wall counts equally, its faults by weight. The one to report. */
export function wafrocArea(walls: readonly RatedWall[]): number {
  return weightedArea(walls, soundOf(walls));
}

/** Area under the weighted AFROC1, against the false marks of all walls: for sets without sound walls. */
export function wafroc1Area(walls: readonly RatedWall[]): number {
  return weightedArea(walls, walls);
}

/** Area under the ROC inferred from the highest mark of each wall, right or wrong. */
export function inferredRocArea(walls: readonly RatedWall[]): number {
  const sound = soundOf(walls).map(highestFalse);
  const faulty = faultyOf(walls).map((wall) =>
    Math.max(highestFalse(wall), ...wall.faults.map(({ rating }) => rating ?? -Infinity)),
  );
  return sum(faulty.map((rating) => shareBelow(sound, rating))) / faulty.length;
}

/** The statistic with each wall left out in turn, in the order of the walls; for a jackknife. */
export function leaveOneOut(
  walls: readonly RatedWall[],
  statistic: (walls: readonly RatedWall[]) => number,
): readonly number[] {
  requireRatedWalls(walls);
  return walls.map((_, left) => statistic(walls.filter((_, w) => w !== left)));
}

/** Highest false rating of a wall; -Infinity when it has none. */
export function highestFalse(wall: RatedWall): number {
  return Math.max(-Infinity, ...wall.falseRatings);
}

function faultArea(walls: readonly RatedWall[], against: readonly RatedWall[]): number {
  const faults = faultyOf(walls).flatMap((wall) => wall.faults);
  const rivals = against.map(highestFalse);
  return sum(faults.map(({ rating }) => shareBelow(rivals, rating ?? -Infinity))) / faults.length;
}

function weightedArea(walls: readonly RatedWall[], against: readonly RatedWall[]): number {
  const faulty = faultyOf(walls);
  const rivals = against.map(highestFalse);
  return sum(faulty.map((wall) => weighted(wall, (rating) => shareBelow(rivals, rating)))) / faulty.length;
}

/** Weighted mean over a wall's faults; an unfound fault enters as -Infinity. */
function weighted(wall: RatedWall, value: (rating: number) => number): number {
  const total = sum(wall.faults.map(({ weight }) => weight));
  return sum(wall.faults.map(({ rating, weight }) => weight * value(rating ?? -Infinity))) / total;
}

/** Share of rivals below a rating, ties counting half. */
function shareBelow(rivals: readonly number[], rating: number): number {
  return sum(rivals.map((rival) => (rival < rating ? 1 : rival === rating ? 0.5 : 0))) / rivals.length;
}

function alarmShare(walls: readonly RatedWall[], threshold: number): number {
  const alarmed = walls.filter((wall) => wall.falseRatings.some((rating) => rating >= threshold));
  return alarmed.length / walls.length;
}

function faultyOf(walls: readonly RatedWall[]): readonly RatedWall[] {
  requireRatedWalls(walls);
  const faulty = walls.filter(({ faults }) => faults.length > 0);
  if (faulty.length === 0) throw new MarkingError('walls: no faulty wall in the set');
  return faulty;
}

function soundOf(walls: readonly RatedWall[]): readonly RatedWall[] {
  requireRatedWalls(walls);
  const sound = walls.filter(({ faults }) => faults.length === 0);
  if (sound.length === 0) throw new MarkingError('walls: no sound wall in the set');
  return sound;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
