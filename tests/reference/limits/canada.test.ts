import { describe, expect, test } from 'vitest';
import { type At, boundAt } from '../../../lib/limits/bound';
import type { RuleSetId } from '../../../lib/limits/limit';
import { namedLimitOf } from '../../../lib/limits/limits';

/** The figure, and the rule set it must come from: a figure borrowed from good practice is no figure of a code. */
function figure(rules: RuleSetId, id: string, at: At = {}) {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) throw new Error(`${rules} has no ${id}`);
  return { value: boundAt(limit, at), from: limit.rules };
}

// National Building Code 2020, Division B, Section 9.20, figures typed from the clauses named.
describe('NBC 2020, Section 9.20', () => {
  test.each<[clause: string, id: string, at: At, value: number]>([
    ['9.20.4.1.(2): 10 + 5', 'bed-joint-most', {}, 15],
    ['9.20.4.1.(2): 10 − 5', 'bed-joint-least', {}, 5],
    ['9.20.4.1.(2): 10 + 5', 'head-joint-most', {}, 15],
    ['9.20.4.1.(2): 10 − 5', 'head-joint-least', {}, 5],
    ['9.20.6.4.(1)', 'veneer-thickness', {}, 75],
    ['9.20.6.4.(2)', 'air-space', {}, 25],
    ['9.20.6.4.(3), a 75 mm unit', 'rake-on-thin-veneer', { depth: 75 }, 0],
    ['9.20.6.4.(3), just below 90', 'rake-on-thin-veneer', { depth: 89.875 }, 0],
    ['9.20.6.4.(3), 90 may be raked', 'rake-on-thin-veneer', { depth: 90 }, Number.POSITIVE_INFINITY],
    ['9.20.8.5, 90 mm', 'overhang-share', { depth: 90 }, 30],
    ['9.20.8.5, 75 mm', 'overhang-share', { depth: 75 }, 25],
    ['9.20.12.3, 90 mm', 'overhang-fixed', { depth: 90 }, 25],
    ['9.20.12.3, just below 90', 'overhang-fixed', { depth: 89.875 }, 12],
    ['9.20.12.1', 'corbel-unit', {}, 25],
    ['9.20.5.2', 'lintel-bearing', {}, 90],
    ['9.20.9.5.(1)', 'tie-thickness', {}, 0.76],
    ['9.20.9.5.(1)', 'tie-width', {}, 22],
    ['9.20.9.5.(1)(e)', 'tie-bend', {}, 6],
    ['9.20.9.5.(1)(f)(i)', 'tie-screw-diameter', {}, 4.16],
    ['9.20.9.5.(1)(f)(i)', 'tie-screw-grip', {}, 38],
    ['9.20.9.5.(1)(f)(ii)', 'tie-nail-length', {}, 76],
    ['9.20.9.5.(1)(f)(ii)', 'tie-nail-grip', {}, 63],
    ['Table 9.20.16.1', 'tie-zinc', {}, 460],
    ['9.20.13.8.(1)', 'weep-spacing', {}, 800],
    ['9.20.13.6', 'flashing-past-face', {}, 5],
    ['9.20.13.6', 'flashing-upstand', {}, 150],
    ['Table 9.20.13.1', 'flashing-lead', {}, 1.73],
    ['9.20.14.1', 'laying-temperature', {}, 5],
    ['9.20.14.1', 'kept-warm', {}, 48],
    ['9.20.1.1, in m', 'wall-height', {}, 11],
  ])('%s: %s', (_, id, at, value) => {
    expect(figure('canada', id, at)).toEqual({ value, from: 'canada' });
  });

  // An hour and a half within which the mortar is in place when the air is at 25 °C or over, else two and a half: 9.20.3.2.(5).
  test.each([
    [24.9, 2 * 60 + 29, true],
    [24.9, 2 * 60 + 30, true],
    [24.9, 2 * 60 + 31, false],
    [25, 60 + 30, true],
    [25, 60 + 31, false],
    [32, 60 + 31, false],
    [8, 60 + 31, true],
  ])('mortar clock: %d °C, %d minutes, in time: %s', (air, minutes, inTime) => {
    const { value, from } = figure('canada', 'mortar-life', { air });
    expect({ inTime: minutes <= value, from }).toEqual({ inTime, from: 'canada' });
  });
});

// Ontario Building Code 2024, Division B, Section 9.20: where it parts from the national code.
describe('OBC 2024, Section 9.20', () => {
  test.each<[clause: string, id: string, value: number]>([
    ['9.20.4.1.(2): 10 + 10', 'bed-joint-most', 20],
    ['9.20.4.1.(2): 10 − 5', 'bed-joint-least', 5],
    ['9.20.4.1.(2): 10 + 10', 'head-joint-most', 20],
    ['9.20.4.1.(2): 10 − 5', 'head-joint-least', 5],
    ['9.20.5.2', 'lintel-bearing', 150],
    ['9.20.6.4.(1)', 'veneer-thickness', 70],
    ['9.20.6.4.(2), as the national code', 'air-space', 25],
    ['9.20.9.5.(1), as the national code', 'tie-width', 22],
    ['9.20.13.8.(1), as the national code', 'weep-spacing', 800],
  ])('%s: %s', (_, id, value) => {
    expect(figure('ontario', id)).toEqual({ value, from: 'ontario' });
  });

  test('9.20.8.5: veneer of 70 mm may stand out by 23.3 mm', () => {
    expect(figure('ontario', 'overhang-share', { depth: 70 }).value).toBeCloseTo(23.3, 1);
  });

  test('the national rule on footings was not read in it, so it is not said to be in it', () => {
    expect(namedLimitOf('canada', 'footing-for-veneer')?.rules).toBe('canada');
    expect(namedLimitOf('ontario', 'footing-for-veneer')).toBe(undefined);
  });
});

// What the NBC does not say: no distance of ties from openings (9.20.9.5), no embedment, no level, no plumb.
test.each([
  'tie-edge-distance',
  'tie-edge-spacing',
  'tie-embedment',
  'course-level',
  'plumb',
  'face-line',
  'gauge',
])('Canada is silent on %s, so good practice is asked and named', (id) => {
  expect(namedLimitOf('canada', id)?.rules).toBe('good-practice');
  expect(namedLimitOf('ontario', id)?.rules).toBe('good-practice');
});
