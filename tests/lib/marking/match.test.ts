import { describe, expect, test } from 'vitest';
import { matchMarks } from '../../../lib/marking/match';
import { sampleFinding, sampleMark } from './samples';

const thick = sampleFinding('thick-joint', ['A3.2-bed'], [0, 0, 100, 20]);
const open = sampleFinding('open-head', ['A5.1/2'], [500, 200, 20, 100]);

describe('one mark', () => {
  test.each([
    ['right place and name', sampleMark('A3.2-bed', [50, 10], 'thick-joint'), 'found', 'found', true],
    ['right place, wrong name', sampleMark('A3.2-bed', [50, 10], 'thin-joint'), 'found', 'wrong name', false],
    ['nothing there', sampleMark('A9.9', [900, 900], 'thick-joint'), 'missed', 'false', false],
  ])('%s', (_, mark, finding, outcome, rightName) => {
    const match = matchMarks([thick, open], [mark], 5);
    expect(match.findings[0]?.outcome).toBe(finding);
    expect(match.findings[0]?.rightName).toBe(rightName);
    expect(match.marks[0]?.outcome).toBe(outcome);
    expect(match.falseMarks).toBe(outcome === 'false' ? 1 : 0);
    expect(match.findings[1]).toEqual({
      outcome: 'missed',
      mark: null,
      repeats: [],
      rightName: false,
      sure: null,
    });
  });

  test('no marks and no findings', () => {
    expect(matchMarks([], [], 5)).toEqual({ findings: [], marks: [], falseMarks: 0 });
    expect(matchMarks([], [sampleMark('A1.1', [0, 0], 'open-head')], 5)).toEqual({
      findings: [],
      marks: [{ outcome: 'false', finding: null }],
      falseMarks: 1,
    });
  });
});

describe('what comes first', () => {
  test('finding most beats the nearest: greedy would find one', () => {
    // Faults at x = 0 and 10, reached within 7; marks at 4 and -5. Nearest first pairs 4 with 0 and strands -5.
    const at = (x: number) => sampleFinding('proud-unit', [`A1.${x}`], [x, 0, 0, 0]);
    const marks = [sampleMark('A2.1', [4, 0], 'proud-unit'), sampleMark('A2.2', [-5, 0], 'proud-unit')];
    const match = matchMarks([at(0), at(10)], marks, 7);
    expect(match.findings.map(({ mark }) => mark)).toEqual([1, 0]);
  });

  test('the right name beats the nearer mark', () => {
    const near = sampleMark('A9.1', [50, 10], 'thin-joint');
    const named = sampleMark('A9.2', [99, 19], 'thick-joint');
    const match = matchMarks([thick], [near, named], 5);
    expect(match.findings[0]).toEqual({ outcome: 'found', mark: 1, repeats: [0], rightName: true, sure: 2 });
    expect(match.marks.map(({ outcome }) => outcome)).toEqual(['repeat', 'found']);
  });

  test('finding both beats naming one', () => {
    // The first mark names the bed but is the only one that reaches the head as well.
    const head = sampleFinding('open-head', ['A3.2/3'], [90, 0, 20, 60]);
    const both = sampleMark('A9.1', [95, 10], 'thick-joint');
    const bedOnly = sampleMark('A9.2', [20, 10], 'thin-joint');
    const match = matchMarks([thick, head], [both, bedOnly], 0);
    expect(match.findings.map(({ mark }) => mark)).toEqual([1, 0]);
    // The name given at the bed still counts for the bed.
    expect(match.findings.map(({ rightName }) => rightName)).toEqual([true, false]);
    expect(match.marks.map(({ outcome }) => outcome)).toEqual(['found', 'wrong name']);
  });

  test('with all else equal, what could fall is found', () => {
    const left = sampleFinding('sliver-piece', ['A1.1'], [0, 0, 100, 100]);
    const right = sampleFinding('shallow-tie', ['A1.2'], [100, 0, 100, 100], { hazard: 'could fall' });
    const between = sampleMark('A9.1', [100, 50], 'open-head');
    expect(matchMarks([left, right], [between], 0).findings.map(({ outcome }) => outcome)).toEqual([
      'missed',
      'found',
    ]);
  });
});

describe('repeats', () => {
  test('the same thing said again is a repeat, and the surest word counts', () => {
    const marks = [
      sampleMark('A3.2-bed', [50, 10], 'thick-joint', { sure: 1 }),
      sampleMark('A3.2-bed', [50, 10], 'thick-joint', { sure: 3 }),
      sampleMark('A3.2-bed', [50, 10], 'thin-joint', { sure: 2 }),
    ];
    const match = matchMarks([thick], marks, 5);
    expect(match.findings[0]).toEqual({
      outcome: 'found',
      mark: 1,
      repeats: [0, 2],
      rightName: true,
      sure: 3,
    });
    expect(match.falseMarks).toBe(0);
  });

  test('a false mark said twice is false once', () => {
    const wrong = sampleMark('A9.9', [900, 900], 'thick-joint');
    const match = matchMarks([thick], [wrong, wrong, wrong], 5);
    expect(match.marks.map(({ outcome }) => outcome)).toEqual(['false', 'repeat', 'repeat']);
    expect(match.falseMarks).toBe(1);
  });

  test('the same part with another fault is a false mark of its own', () => {
    const marks = [
      sampleMark('A9.9', [900, 900], 'thick-joint'),
      sampleMark('A9.9', [900, 900], 'thin-joint'),
    ];
    expect(matchMarks([thick], marks, 5).falseMarks).toBe(2);
  });
});

describe('refusals', () => {
  const mark = sampleMark('A1.1', [0, 0], 'open-head');
  test.each([
    ['negative slack', () => matchMarks([thick], [mark], -1), 'slack: -1 is negative'],
    ['slack that is no number', () => matchMarks([], [], NaN), 'slack: NaN is not a finite number'],
    [
      'place off the numbers',
      () => matchMarks([], [{ ...mark, x: Infinity }], 5),
      'marks.0.x: Infinity is not a finite number',
    ],
    [
      'certainty 4',
      () => matchMarks([], [mark, { ...mark, sure: 4 as 3 }], 5),
      'marks.1.sure: 4 is not 1, 2 or 3',
    ],
    [
      'region inside out',
      () => matchMarks([sampleFinding('open-head', ['A1.1'], [0, 0, -5, 5])], [], 5),
      'findings.0.region.width: -5 is negative',
    ],
  ])('%s', (_, run, message) => {
    expect(run).toThrow(message);
  });

  test('more pairs than can be compared exactly', () => {
    const many = Array.from({ length: 101 }, (_, i) =>
      sampleFinding('open-head', [`A1.${i}`], [i * 10, 0, 1, 1]),
    );
    const marks = many.map((_, i) => sampleMark(`A1.${i}`, [i * 10, 0], 'open-head'));
    expect(() => matchMarks(many, marks, 5)).toThrow('marks: more than 100 faults found on one wall');
    expect(matchMarks(many.slice(1), marks.slice(1), 5).findings.every(({ rightName }) => rightName)).toBe(
      true,
    );
  });
});
