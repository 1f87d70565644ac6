import { describe, expect, test } from 'vitest';
import { grade } from '../../app/grading';
import { parseMarks } from '../../app/marks-file';
import { layPlan } from '../../lib/generate/generate';
import { planWith } from '../../lib/generate/planner';
import { inspect } from '../../lib/inspect/inspect';

const proud = layPlan(
  planWith('plain-panel', 'anchored', 'canada', [{ fault: 'proud-unit', severity: 3 }], 5),
);
const [unit] = inspect(proud, 'canada')[0]?.parts ?? [];
const leaning = layPlan(
  planWith('plain-panel', 'anchored', 'canada', [{ fault: 'out-of-plumb', severity: 2 }], 5),
);
const sound = layPlan(planWith('plain-panel', 'anchored', 'canada', [], 5));

describe('grading a hand-in', () => {
  test('place and name right: whole marks', () => {
    const result = grade(proud, 'canada', [{ part: unit ?? '', fault: 'proud-unit' }]);
    expect(result.score).toBe(1);
    expect(result.findings.map(({ outcome }) => outcome)).toEqual(['found']);
  });

  test('place right, name wrong: half', () => {
    const result = grade(proud, 'canada', [{ part: unit ?? '', fault: 'twisted-unit' }]);
    expect(result.score).toBe(0.5);
    expect(result.marks.map(({ outcome }) => outcome)).toEqual(['wrong name']);
  });

  test('a fault of a whole panel may be marked on any unit of it', () => {
    expect(grade(leaning, 'canada', [{ part: 'A7.3', fault: 'out-of-plumb' }]).score).toBe(1);
  });

  test('another name on one unit does not hit a fault of the whole panel', () => {
    expect(grade(leaning, 'canada', [{ part: 'A7.3', fault: 'proud-unit' }]).score).toBe(0);
  });

  test('a sound wall left unmarked is right; one false mark halves it', () => {
    expect(grade(sound, 'canada', []).score).toBe(1);
    expect(grade(sound, 'canada', [{ part: 'A7.3', fault: 'proud-unit' }]).score).toBe(0.5);
  });

  test('a false mark is told what was measured there and against which limit', () => {
    const [mark] = grade(sound, 'canada', [{ part: 'A7.3', fault: 'twisted-unit' }]).marks;
    expect(mark?.explanation?.measured).toMatchObject({ limit: 3, end: 'at most', rules: 'good-practice' });
    expect(mark?.explanation?.measured?.value).toBe(
      Math.abs(sound.units.find(({ id }) => id === 'A7.3')?.twist ?? 9),
    );
  });

  test('the same mark twice changes nothing', () => {
    const mark = { part: unit ?? '', fault: 'proud-unit' };
    expect(grade(proud, 'canada', [mark, mark]).score).toBe(1);
  });

  test.each([
    [[{ part: 'Z1.1', fault: 'proud-unit' }], 'marks.0.part: this wall has no part "Z1.1"'],
    [[{ part: 'A1.1', fault: 'ugly' }], 'marks.0.fault: there is no fault "ugly"'],
    [[{ part: 'A1.1', fault: 'proud-unit', sure: 9 }], 'marks.0.sure: 9 is not 1, 2 or 3'],
    [
      Array.from({ length: 201 }, () => ({ part: 'A1.1', fault: 'proud-unit' })),
      'marks: 201 handed in, at most 200',
    ],
    [
      ['proud-unit', 'twisted-unit', 'sliver-piece'].map((fault) => ({ part: 'A1.1', fault })),
      'marks.2: part A1.1 has more than 2 different faults',
    ],
  ])('%j is refused whole', (marks, message) => {
    expect(() => grade(sound, 'canada', marks)).toThrow(message);
  });
});

describe('reading marks', () => {
  test('a good file', () => {
    expect(parseMarks('{"marks":[{"part":"A1.1","fault":"proud-unit","sure":3}]}')).toEqual([
      { part: 'A1.1', fault: 'proud-unit', sure: 3 },
    ]);
  });

  test.each([
    ['', 'marks: not JSON'],
    ['[]', 'marks: '],
    ['{"marks":{}}', 'marks: '],
    ['{"marks":[{"part":1,"fault":"proud-unit"}]}', 'marks.0.part: '],
    ['{"marks":[{"part":"A1.1"}]}', 'marks.0.fault: '],
    ['{"marks":[{"part":"A1.1","fault":"x","sure":-1}]}', 'marks.0.sure: '],
    ['{"marks":[{"part":"A1.1","fault":"x","sure":1e999}]}', 'marks.0.sure: '],
    ['{"marks":[],"extra":1}', 'marks: '],
    ['x'.repeat(10_000_000), 'letters are too many'],
    [`{"marks":[${'{"part":"A1.1","fault":"x"},'.repeat(201).slice(0, -1)}]}`, 'marks: '],
  ])('bad text is refused with its place', (text, message) => {
    expect(() => parseMarks(text)).toThrow(message);
  });
});
