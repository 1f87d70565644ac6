import { expect, test } from 'vitest';
import { codesOf, openPlace } from '../../app/desk/open-place';
import { layWall } from '../../lib/generate/generate';
import { codeOf, parseCode } from '../../lib/generate/wall-code';
import type { CheckId } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';
import type { PlacedHandIn } from '../../lib/store/hand-in-record';

/** A panel whose gauge drifts: a fault of the whole panel. Found by looking. */
const DRIFTS = [...Array(200).keys()]
  .map((seed) => codeOf({ topic: 'line', kind: 'plain-panel', difficulty: 2, rules: 'canada', seed }))
  .find((code) => inspect(layWall(parseCode(code)), 'canada')[0]?.check === 'gauge-drift');

function handIn(
  learner: string,
  code: string,
  ...marks: readonly (readonly [part: string, fault: CheckId])[]
): PlacedHandIn {
  return {
    attempt: `try of ${learner}`,
    learner,
    name: learner,
    code,
    marks: marks.map(([part, fault]) => ({ part, fault })),
    saysSound: marks.length === 0,
  };
}

test('the code that most had comes first', () => {
  expect(codesOf([handIn('ann', 'A'), handIn('bo', 'B'), handIn('cy', 'B')])).toEqual(['B', 'A']);
});

test('a mark on one unit for a fault of the whole panel is counted on the panel, with what is there', () => {
  const code = DRIFTS ?? '';
  const open = openPlace(code, [
    handIn('ann', code, ['A3.2', 'gauge-drift']),
    handIn('bo', code, ['A5.1', 'gauge-drift'], ['A5.1', 'twisted-unit']),
    handIn('cy', code),
    handIn('dee', 'ANOTHER'),
  ]);
  expect(open?.heat.map(({ part, learners, share }) => [part, learners, share])).toEqual([
    ['A', 2, 2 / 3],
    ['A5.1', 1, 1 / 3],
  ]);
  expect(open?.thereAt('A').map(({ check }) => check)).toEqual(['gauge-drift']);
  expect(open?.thereAt('A5.1')).toEqual([]);
  expect(open?.nameOf('A5.1')).toBe('Course 5, unit 1');
});

test('a code that names no wall, and marks that mean nothing on the wall, give no map', () => {
  const code = DRIFTS ?? '';
  expect(openPlace('222-2222-222', [])).toBe(null);
  expect(openPlace(code, [handIn('ann', code, ['Z99.1', 'gauge-drift'])])).toBe(null);
});
