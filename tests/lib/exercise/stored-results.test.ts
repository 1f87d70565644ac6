import { describe, expect, test } from 'vitest';
import { grade } from '../../../lib/exercise/grade';
import { keyOf } from '../../../lib/exercise/key';
import type { Result } from '../../../lib/exercise/result';
import { formatResults, parseResults } from '../../../lib/exercise/stored-results';
import { layPlan } from '../../../lib/generate/generate';
import { planWith } from '../../../lib/generate/planner';
import { surveyedWall } from '../../../lib/wall/surveyed';

const proud = layPlan(
  planWith('plain-panel', 'anchored', 'canada', [{ fault: 'proud-unit', severity: 3 }], 5),
);
const key = keyOf(surveyedWall(proud), 'canada');
const [unit = ''] = key.findings[0]?.parts ?? [];
/** The fault found with all that can be said of it, and a false mark that is explained. */
const RESULT = grade(key, [
  { part: unit, fault: 'proud-unit', sure: 3, reading: 6, kind: 'good practice', act: 'put right now' },
  { part: 'A7.3', fault: 'thick-joint', sure: 1 },
]);

/** True samples of what earlier versions of the site stored, letter for letter but for the lengths of the lists. */
const REGION = { panel: 'A', x: 412, y: 300.5, width: 190, height: 57 };
const SOURCE = {
  limit: 'unit-set',
  rules: 'good-practice',
  title: 'Common practice of the trade',
  edition: '',
  clause: '',
  howSure: 'common practice',
};
const FINDING = {
  ...{ check: 'proud-unit', parts: ['A5.3'], region: REGION, measured: 6.5, unit: 'mm', limit: 3 },
  ...{ margin: -3.5, kind: 'good practice', hazard: 'looks', source: SOURCE },
};
const PLACE = { part: 'A5.3', panel: 'A', x: 507, y: 329, sure: 2 };
const BARE_MARK = { mark: { ...PLACE, fault: 'twisted-unit' }, outcome: 'wrong name', explanation: null };
/** The first: place and name only. */
const FIRST = {
  ...{ score: 0.5, capped: null },
  findings: [{ finding: FINDING, outcome: 'wrong name', mark: 0 }],
  marks: [BARE_MARK],
};
const COUNTS = {
  ...{ found: { got: 1, of: 1 }, named: { got: 0, of: 1 }, measured: { got: 0, of: 0 } },
  ...{ judged: { got: 0, of: 0 }, acted: { got: 1, of: 1 } },
};
const VERDICTS = { found: true, named: false, measured: 'not given', judged: 'not given', acted: 'right' };
const SAID = { act: 'put right now' };
/** Then with the answer, how it stands and the five marks. */
const SECOND = {
  ...FIRST,
  findings: [
    { ...FIRST.findings[0], answer: SAID, verdicts: VERDICTS, within: 1, rightAct: 'put right now' },
  ],
  marks: [{ ...BARE_MARK, answer: SAID }],
  parts: COUNTS,
};
/** Then with walls that were not answered. */
const THIRD = { ...SECOND, score: 0, answered: false };

describe('results as the store keeps them', () => {
  test('what was graded is read back as it was', () => {
    const other: Result = { ...RESULT, score: 0, answered: false };
    expect(parseResults(formatResults([RESULT, other]))).toEqual([RESULT, other]);
    expect(RESULT.marks.map(({ outcome }) => outcome)).toEqual(['found', 'false']);
  });

  test('the first form said place and name only: the rest was not given, and the wall was taken as answered', () => {
    expect(parseResults(JSON.stringify([FIRST]))).toEqual([
      {
        ...{ score: 0.5, capped: null, answered: true },
        findings: [
          {
            ...{ finding: FINDING, outcome: 'wrong name', mark: 0, answer: {} },
            verdicts: { ...VERDICTS, acted: 'not given' },
            ...{ within: 1, rightAct: 'put right now' },
          },
        ],
        marks: [{ ...BARE_MARK, answer: {} }],
        parts: { ...COUNTS, acted: { got: 0, of: 0 } },
      },
    ]);
  });

  test('the forms after it are read as they are', () => {
    expect(parseResults(JSON.stringify([SECOND, THIRD]))).toEqual([{ ...SECOND, answered: true }, THIRD]);
  });

  test.each([
    ['{"version":3,"results":[]}', 'results.version: '],
    ['{"results":[]}', 'results.version: '],
    ['[{"score":2,"findings":[],"marks":[]}]', 'results.0.score: '],
    [
      JSON.stringify([
        { ...FIRST, findings: [{ ...FIRST.findings[0], finding: { ...FINDING, parts: ['5'] } }] },
      ]),
      'results.0.findings.0.finding.parts.0: is not the name of a part',
    ],
    [
      JSON.stringify({ version: 2, results: [{ ...RESULT, answered: undefined }] }),
      'results.results.0.answered: ',
    ],
  ])('%s is refused with its place', (json, message) => {
    expect(() => parseResults(json)).toThrow(message);
  });
});
