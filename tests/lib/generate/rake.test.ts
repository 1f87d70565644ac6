import { describe, expect, test } from 'vitest';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import { inspect } from '../../../lib/inspect/inspect';
import { RULE_SETS } from '../../../lib/limits/limit';
import { meanLength, topLeft, topRight } from '../../../lib/wall/cut';
import type { Wall } from '../../../lib/wall/model';
import { surveyOf } from '../../../lib/wall/survey';

const SEEDS = Array.from({ length: 12 }, (_, seed) => seed);
/** Scatter of good work, handmade units among them, mm. */
const SCATTER = 2;

function gable(rules: (typeof RULE_SETS)[number], seed: number, severity: number | null = null): Wall {
  const spoils = severity === null ? [] : [{ fault: 'sliver-piece' as const, severity }];
  return layPlan(planWith('gable-end', 'anchored', rules, spoils, seed));
}

function underRake(wall: Wall) {
  const [survey] = surveyOf(wall).panels;
  const from = survey?.panel.gable?.fromCourse ?? 0;
  return {
    survey,
    from,
    step: survey?.panel.gable?.step ?? 0,
    courses: survey?.courses.slice(from - 1) ?? [],
  };
}

describe.each(RULE_SETS)('a sound gable by the rules of %s', (rules) => {
  const walls = SEEDS.map((seed) => gable(rules, seed));

  test('has both ends of every course under the rake cut, and no other unit', () => {
    for (const wall of walls) {
      const { courses } = underRake(wall);
      const ends = courses.flatMap((course) => [course[0], course[course.length - 1]]);
      expect(ends.every((end) => end?.unit.kind === 'cut')).toBe(true);
      expect(wall.units.filter(({ cut }) => cut !== undefined).length).toBe(2 * courses.length);
    }
  });

  test('has its feet and its tops on one straight line up the slope', () => {
    for (const wall of walls) {
      const { courses, step } = underRake(wall);
      for (const [up, course] of courses.entries()) {
        const first = course[0]?.unit;
        expect(Math.abs((first?.x ?? 0) - up * step)).toBeLessThanOrEqual(SCATTER);
        const alongTop = (up + (first?.height ?? 0) / wall.gauge) * step;
        expect(Math.abs((first ? topLeft(first) : 0) - alongTop)).toBeLessThanOrEqual(SCATTER);
      }
    }
  });

  // A bat shorter than the unit is wide is weakly held (Masonry Construction magazine, on round openings; the source of `smallest-piece`).
  test('has no piece at the rake that is shorter halfway up than it is deep, and each stands on what is below it', () => {
    for (const wall of walls) {
      const { courses } = underRake(wall);
      for (const [up, course] of courses.entries()) {
        for (const { unit, below } of course) {
          expect(meanLength(unit)).toBeGreaterThan(unit.depth);
          if (up === 0) continue;
          expect(Math.min(...below.map((lower) => topLeft(lower.unit)))).toBeLessThanOrEqual(unit.x);
          expect(Math.max(...below.map((lower) => topRight(lower.unit)))).toBeGreaterThanOrEqual(
            unit.x + unit.length,
          );
        }
      }
    }
  });
});

test('a sliver at a rake runs out to a triangle when it is bad, and the pieces beside it are none', () => {
  const atRake = SEEDS.flatMap((seed) => {
    const wall = gable('canada', seed, 2.5);
    const [finding, ...others] = inspect(wall, 'canada');
    expect([finding?.check, others]).toEqual(['sliver-piece', []]);
    const unit = wall.units.find(({ id }) => id === finding?.parts[0]);
    return unit?.cut ? [unit] : [];
  });
  expect(atRake.length).toBeGreaterThanOrEqual(3);
  expect(atRake.length).toBeLessThan(SEEDS.length);
  for (const unit of atRake) expect(Math.abs(topRight(unit) - topLeft(unit))).toBeLessThanOrEqual(1);
});
