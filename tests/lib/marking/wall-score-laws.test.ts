import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Finding } from '../../../lib/inspect/finding';
import type { PlacedMark } from '../../../lib/marking/mark';
import { matchMarks } from '../../../lib/marking/match';
import { canMean } from '../../../lib/marking/place';
import { scoreWall } from '../../../lib/marking/wall-score';
import { findingsArb, markArb, marksArb, PANEL_WIDTH, SLACK } from './arbitraries';
import { sampleFinding, sampleMark } from './samples';

const RUNS = { numRuns: 2000 };

const score = (findings: readonly Finding[], marks: readonly PlacedMark[]): number =>
  scoreWall(findings, matchMarks(findings, marks, SLACK)).score;
const hits = (findings: readonly Finding[], mark: PlacedMark) =>
  findings.some((finding) => canMean(mark, finding, SLACK));

test('one more false mark never raises the score', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, markArb, (findings, marks, extra) => {
      fc.pre(!hits(findings, extra));
      expect(score(findings, [...marks, extra])).toBeLessThanOrEqual(score(findings, marks));
    }),
    RUNS,
  );
});

test('one more mark on a fault never lowers the score, whatever its name', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, markArb, (findings, marks, extra) => {
      fc.pre(hits(findings, extra));
      expect(score(findings, [...marks, extra])).toBeGreaterThanOrEqual(score(findings, marks));
    }),
    RUNS,
  );
});

test('the order of marks, and of findings, changes nothing', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, (findings, marks) => {
      expect(score(findings, marks.toReversed())).toBe(score(findings, marks));
      expect(score(findings.toReversed(), marks)).toBe(score(findings, marks));
    }),
    RUNS,
  );
});

test('a mirrored wall with mirrored marks scores the same', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, (findings, marks) => {
      const mirrored = findings.map((finding) => ({
        ...finding,
        region: { ...finding.region, x: PANEL_WIDTH - finding.region.x - finding.region.width },
      }));
      const mirroredMarks = marks.map((mark) => ({ ...mark, x: PANEL_WIDTH - mark.x }));
      expect(score(mirrored, mirroredMarks)).toBe(score(findings, marks));
    }),
    RUNS,
  );
});

test('a mark handed in again changes nothing, however sure', () => {
  fc.assert(
    fc.property(
      findingsArb,
      marksArb,
      fc.nat(),
      fc.constantFrom(1 as const, 3 as const),
      (findings, marks, pick, sure) => {
        const again = marks[pick % Math.max(1, marks.length)];
        fc.pre(again !== undefined);
        if (again) expect(score(findings, [...marks, { ...again, sure }])).toBe(score(findings, marks));
      },
    ),
    RUNS,
  );
});

test('the score stays between 0 and 1, and only what could fall caps it', () => {
  fc.assert(
    fc.property(findingsArb, marksArb, (findings, marks) => {
      const match = matchMarks(findings, marks, SLACK);
      const wall = scoreWall(findings, match);
      expect(wall.score).toBeGreaterThanOrEqual(0);
      expect(wall.score).toBeLessThanOrEqual(1);
      const missed = findings.some(
        (f, i) => f.hazard === 'could fall' && match.findings[i]?.outcome === 'missed',
      );
      if (missed) expect(wall.score).toBeLessThanOrEqual(0.5);
      else expect(wall.capped).toBe(false);
    }),
    RUNS,
  );
});

// Three faults side by side whose regions overlap. Were a name to count only for the finding its mark is paired
// with, the third mark, right in place and name, would push the others along and lower the score.
test('a right mark that pushes others along does not lower the score', () => {
  const findings = [
    sampleFinding('thick-joint', ['A1.1'], [0, 0, 100, 50], { hazard: 'looks' }),
    sampleFinding('shallow-tie', ['A1.2'], [90, 0, 100, 50], { hazard: 'could fall' }),
    sampleFinding('open-head', ['A1.3'], [180, 0, 100, 50], { hazard: 'looks' }),
  ];
  const first = sampleMark('A5.1', [95, 25], 'thick-joint');
  const second = sampleMark('A5.2', [185, 25], 'shallow-tie');
  const third = sampleMark('A5.3', [10, 25], 'thick-joint');
  expect(score(findings, [first, second])).toBe(4 / 5);
  expect(score(findings, [first, second, third])).toBe(9 / 10);
});

// Found by the law above: the second mark says the same as the first, at a point nearer to the other fault.
test('the same part and fault at another point does not give up what was found', () => {
  const findings = [
    sampleFinding('thick-joint', ['A2.1'], [0, 100, 0, 0], { hazard: 'looks' }),
    sampleFinding('thick-joint', ['A2.1'], [0, 0, 0, 0], { hazard: 'could fall' }),
  ];
  const first = sampleMark('A2.1', [100, 0], 'thick-joint');
  const second = sampleMark('A2.1', [0, 50.125], 'thick-joint');
  expect(score(findings, [first])).toBe(3 / 4);
  expect(score(findings, [first, second])).toBe(1);
});
