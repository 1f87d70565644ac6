import { describe, expect, test } from 'vitest';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import type { RawMark } from '../../../lib/marking/mark';
import { withOneJointOff } from '../../../lib/marking/one-joint-off';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { handWall } from '../views/hand-wall';
import { sampleFinding, sampleMark } from './samples';

/**
 * The hand wall: units 200 × 60, joints 10. The open head is A3.1/2, at x 200 to 210 and y 150 to 210. It meets the beds under units 1
 * and 2 of its course (y 140 to 150) at their corners. The bed under A4.2 (x 105 to 305, y 210 to 220) lies along its top, and its middle
 * (205, 215) within 16 mm of it: a mark there means the head itself.
 */
const OPEN = sampleFinding('open-head', ['A3.1/2', 'A3.1', 'A3.2'], [200, 150, 10, 60]);

const KEY = { ...keyOf(surveyedWall(handWall()), 'canada'), findings: [OPEN] };

function marked(...marks: readonly RawMark[]) {
  const { score, findings, marks: told } = grade(KEY, marks);
  return {
    score,
    finding: findings[0]?.outcome,
    mark: findings[0]?.mark,
    marks: told.map(({ outcome }) => outcome),
  };
}

const openAt = (part: string): RawMark => ({ part, fault: 'open-head' });

describe('a mark one joint off an open head', () => {
  test.each(['A3.1-bed', 'A3.2-bed'])('%s meets it: right place, half', (part) => {
    expect(marked(openAt(part))).toEqual({
      score: 0.5,
      finding: 'one joint off',
      mark: 0,
      marks: ['one joint off'],
    });
  });

  test.each([
    ['A3.2/3', 'the next head, a unit further'],
    ['A2.1/2', 'a head of the course below, 95 mm aside'],
    ['A4.1-bed', 'a bed of the course above, 105 mm aside'],
    ['A2.2-bed', 'a bed two courses down'],
    ['A4.2', 'the unit above, which is no joint'],
  ])('%s is %s: a false mark', (part) => {
    expect(marked(openAt(part))).toMatchObject({ score: 0, finding: 'missed', mark: null, marks: ['false'] });
  });

  test('a mark whose place lies beside it finds it, joint or no', () => {
    expect(marked(openAt('A4.2-bed'))).toMatchObject({ score: 1, finding: 'found' });
  });

  test('under another name it is a false mark', () => {
    expect(marked({ part: 'A3.1-bed', fault: 'thick-joint' }).marks).toEqual(['false']);
  });

  test('the fault takes one such mark, the first; the others are false', () => {
    expect(marked(openAt('A3.2-bed'), openAt('A3.1-bed'))).toEqual({
      score: 0,
      finding: 'one joint off',
      mark: 0,
      marks: ['one joint off', 'false'],
    });
  });

  test('beside a mark that finds it, another joint is a false mark', () => {
    expect(marked(openAt('A3.1/2'), openAt('A3.1-bed'))).toEqual({
      score: 0.5,
      finding: 'found',
      mark: 0,
      marks: ['found', 'false'],
    });
  });

  test('it is not counted as found', () => {
    const { parts } = grade(KEY, [openAt('A3.1-bed')]);
    expect(parts.found).toEqual({ got: 0, of: 1 });
    expect(parts.named).toEqual({ got: 0, of: 0 });
  });
});

test.each([
  [16, 'one joint off'],
  [16.125, 'false'],
])('joints %s mm apart: %s', (apart, outcome) => {
  const joints = new Map([
    ['A1.1-bed', { kind: 'bed', x: 0, y: 0, width: 200, height: 10 }],
    ['A1.2-bed', { kind: 'bed', x: 200 + apart, y: 0, width: 200, height: 10 }],
  ]);
  const finding = sampleFinding('thick-joint', ['A1.1-bed', 'A1.1'], [0, 0, 200, 10]);
  const result = withOneJointOff(
    {
      findings: [{ outcome: 'missed', mark: null, repeats: [], rightName: false, sure: null }],
      marks: [{ outcome: 'false', finding: null }],
      falseMarks: 1,
    },
    [finding],
    [sampleMark('A1.2-bed', [300 + apart, 5], 'thick-joint')],
    joints,
    16,
  );
  expect(result.marks.map((mark) => mark.outcome)).toEqual([outcome]);
  expect(result.falseMarks).toBe(outcome === 'false' ? 1 : 0);
});
