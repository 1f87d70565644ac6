import { describe, expect, test } from 'vitest';
import { grade as gradeBy } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import { parseMarks } from '../../../lib/exercise/read-marks';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import { inspect } from '../../../lib/inspect/inspect';
import type { RuleSetId } from '../../../lib/limits/limit';
import type { RawMark } from '../../../lib/marking/mark';
import type { Wall } from '../../../lib/wall/model';
import { surveyedWall } from '../../../lib/wall/surveyed';

const grade = (wall: Wall, rules: RuleSetId, marks: readonly RawMark[]) =>
  gradeBy(keyOf(surveyedWall(wall), rules), marks);

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

  test('five marks: what was given is held against the wall, what was not is not asked', () => {
    const measured = inspect(proud, 'canada')[0]?.measured ?? 0;
    const given = {
      part: unit ?? '',
      fault: 'proud-unit',
      reading: measured + 0.9,
      act: 'put right now',
    } as const;
    const { parts, findings } = grade(proud, 'canada', [given]);
    expect(parts).toEqual({
      found: { got: 1, of: 1 },
      named: { got: 1, of: 1 },
      measured: { got: 1, of: 1 },
      judged: { got: 0, of: 0 },
      acted: { got: 1, of: 1 },
    });
    // The feelers are good to 0.2 mm, and half a sixteenth of an inch may be lost in writing: 1 mm in all.
    expect(findings[0]?.within).toBe(1);
    const far = grade(proud, 'canada', [{ ...given, reading: measured + 1.125, kind: 'code minimum' }]);
    expect([far.parts.measured, far.parts.judged]).toEqual([
      { got: 0, of: 1 },
      { got: 0, of: 1 },
    ]);
    expect(far.score).toBe(1);
  });

  test('a second reading at the same place does not mend the first', () => {
    const measured = inspect(proud, 'canada')[0]?.measured ?? 0;
    const mark = { part: unit ?? '', fault: 'proud-unit', reading: 99 } as const;
    const { parts } = grade(proud, 'canada', [mark, { ...mark, reading: measured }]);
    expect(parts.measured).toEqual({ got: 0, of: 1 });
  });

  test('a look-alike that is to be left costs nothing, once for each look-alike', () => {
    const rough = layPlan({
      ...planWith('plain-panel', 'anchored', 'canada', [], 5),
      lookAlikes: ['weep-openings'],
    });
    const heads = rough.heads.filter(({ filled }) => filled === 0).map(({ joint }) => joint);
    const leave = (part: string) => ({ part, fault: 'open-head', act: 'leave' }) as const;
    const once = grade(rough, 'canada', [leave(heads[0] ?? '')]);
    expect(once.score).toBe(1);
    expect(once.marks[0]?.outcome).toBe('left');
    expect(once.marks[0]?.explanation?.lookAlike).toBe('weep-openings');
    expect(once.parts.acted).toEqual({ got: 1, of: 1 });
    const twice = grade(rough, 'canada', [leave(heads[0] ?? ''), leave(heads[1] ?? '')]);
    expect(twice.score).toBe(0.5);
    expect(grade(rough, 'canada', [{ part: heads[0] ?? '', fault: 'open-head' }]).score).toBe(0.5);
    // To leave what is no look-alike is to name a fault that is not there.
    expect(grade(sound, 'canada', [{ part: 'A7.3', fault: 'proud-unit', act: 'leave' }]).score).toBe(0.5);
  });

  test('the same mark twice changes nothing', () => {
    const mark = { part: unit ?? '', fault: 'proud-unit' } as const;
    expect(grade(proud, 'canada', [mark, mark]).score).toBe(1);
  });

  test.each<[readonly RawMark[], string]>([
    [[{ part: 'Z1.1', fault: 'proud-unit' }], 'marks.0.part: this wall has no part "Z1.1"'],
    [
      Array.from({ length: 201 }, () => ({ part: 'A1.1', fault: 'proud-unit' }) as const),
      'marks: 201 handed in, at most 200',
    ],
    [
      (['proud-unit', 'twisted-unit', 'sliver-piece'] as const).map((fault) => ({ part: 'A1.1', fault })),
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
    const whole = {
      ...{ part: 'A1.1', fault: 'proud-unit', sure: 3, reading: 6.5 },
      ...{ kind: 'good practice', act: 'leave' },
    };
    expect(parseMarks(JSON.stringify({ marks: [whole] }))).toEqual([whole]);
  });

  test('every figure at its border is read, and one beyond is not', () => {
    const reads = (mark: object) => () =>
      parseMarks(JSON.stringify({ marks: [{ part: 'A1.1', fault: 'proud-unit', ...mark }] }));
    for (const sure of [1, 2, 3]) expect(reads({ sure })()).toMatchObject([{ sure }]);
    for (const reading of [-1_000_000, 1_000_000]) expect(reads({ reading })()).toMatchObject([{ reading }]);
    expect(reads({ part: 'A'.repeat(40) })()).toHaveLength(1);
    for (const sure of [0, 4, 1.5]) expect(reads({ sure })).toThrow('marks.0.sure: ');
    for (const reading of [-1_000_001, 1_000_001]) expect(reads({ reading })).toThrow('marks.0.reading: ');
    for (const part of ['', 'A'.repeat(41)]) expect(reads({ part })).toThrow('marks.0.part: ');
  });

  test.each([
    ['', 'marks: not JSON'],
    ['[]', 'marks: '],
    ['{"marks":{}}', 'marks: '],
    ['{"marks":[{"part":1,"fault":"proud-unit"}]}', 'marks.0.part: '],
    ['{"marks":[{"part":"A1.1"}]}', 'marks.0.fault: '],
    [
      '{"marks":[{"part":"A1.1","fault":"ugly"}]}',
      'marks.0.fault: there is no fault "ugly" in the catalogue',
    ],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","sure":9}]}', 'marks.0.sure: '],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","reading":"6 mm"}]}', 'marks.0.reading: '],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","reading":1e7}]}', 'marks.0.reading: '],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","kind":"law"}]}', 'marks.0.kind: '],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","act":"run"}]}', 'marks.0.act: '],
    ['{"marks":[{"part":"A1.1","fault":"proud-unit","sure":1e999}]}', 'marks.0.sure: '],
    ['{"marks":[],"extra":1}', 'marks: '],
    ['x'.repeat(10_000_000), 'letters are too many'],
    [`{"marks":[${'{"part":"A1.1","fault":"proud-unit"},'.repeat(201).slice(0, -1)}]}`, 'marks: '],
  ])('bad text is refused with its place', (text, message) => {
    expect(() => parseMarks(text)).toThrow(message);
  });
});
