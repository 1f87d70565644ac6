import { describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { CHECKS } from '../../../lib/inspect/finding';
import { rightActOf } from '../../../lib/marking/act';
import { type Answer, countFiveMarks, judgeAnswer, MISSED } from '../../../lib/marking/five-marks';

/** A lintel with 50 mm of bearing where a code asks for more: invented for these tables. */
const FINDING = { measured: 50, kind: 'code minimum' } as const;
const judge = (answer: Answer, named = true) =>
  judgeAnswer(FINDING, named, answer, 1.75, 'make safe and call');

describe('one answer, by hand', () => {
  test.each([
    // 50 − 1.75 = 48.25 and 50 + 1.75 = 51.75 are the ends, whole in binary, and belong.
    [48.25, 'right'],
    [51.75, 'right'],
    [51.875, 'wrong'],
    [48.125, 'wrong'],
    [52, 'wrong'],
    [-50, 'wrong'],
    [undefined, 'not given'],
  ])('a reading of %s against 50 within 1.75 is %s', (reading, verdict) => {
    expect(judge(reading === undefined ? {} : { reading }).measured).toBe(verdict);
  });

  test('the kind of limit and the act are right, wrong or not given', () => {
    expect(judge({ kind: 'code minimum', act: 'leave' })).toMatchObject({ judged: 'right', acted: 'wrong' });
    expect(judge({ kind: 'looks', act: 'make safe and call' })).toMatchObject({
      judged: 'wrong',
      acted: 'right',
    });
    expect(judge({})).toMatchObject({ judged: 'not given', acted: 'not given' });
  });

  test('under a wrong name only the act is looked at', () => {
    expect(judge({ reading: 50, kind: 'code minimum', act: 'make safe and call' }, false)).toEqual({
      found: true,
      named: false,
      measured: 'not given',
      judged: 'not given',
      acted: 'right',
    });
  });
});

test('five marks of a wall of four faults, counted by hand', () => {
  const answers = [
    judge({ reading: 50, kind: 'code minimum', act: 'make safe and call' }),
    judge({ reading: 60 }),
    judge({ act: 'leave' }, false),
    MISSED,
  ];
  expect(countFiveMarks(answers, 0)).toEqual({
    found: { got: 3, of: 4 },
    named: { got: 2, of: 3 },
    measured: { got: 1, of: 2 },
    judged: { got: 1, of: 1 },
    acted: { got: 1, of: 2 },
  });
  expect(countFiveMarks(answers, 2).acted).toEqual({ got: 3, of: 4 });
});

describe('the right act', () => {
  test('comes from the danger, then from how far the fault reaches', () => {
    expect(rightActOf('could fall', 'in sight')).toBe('make safe and call');
    expect(rightActOf('could fall', 'out of sight')).toBe('make safe and call');
    expect(rightActOf('lets water in', 'out of sight')).toBe('open up further');
    expect(rightActOf('lets water in', 'in sight')).toBe('put right now');
    expect(rightActOf('looks', 'in sight')).toBe('put right now');
  });

  // Typed from the words of the catalogue on what puts each right: every row that begins "Keep people away" or hangs behind the face is
  // made safe; hollow heads, ties near the face, bad mixings and what is wrong behind weeps and on flashings are looked for further; the rest the mason puts right.
  test('of each fault of the catalogue', () => {
    const opened = [
      ...['open-head', 'tie-near-face', 'stale-mortar', 'lean-mortar'],
      ...['blocked-weep', 'low-flashing', 'no-end-dam'],
    ];
    const safe = [
      ...['missing-back-mortar', 'ring-buttered-back', 'overhang-too-far', 'no-bearing-return', 'weak-angle'],
      ...[
        'short-lintel-bearing',
        'no-lintel',
        'ties-too-far-apart',
        'no-tie-at-edge',
        'shallow-tie',
        'thin-tie',
      ],
    ];
    const acts = CHECKS.map((check) => [check, rightActOf(CATALOGUE[check].hazard, CATALOGUE[check].reach)]);
    expect(acts).toEqual(
      CHECKS.map((check) => [
        check,
        safe.includes(check)
          ? 'make safe and call'
          : opened.includes(check)
            ? 'open up further'
            : 'put right now',
      ]),
    );
  });
});
