import fc from 'fast-check';
import { expect, test } from 'vitest';
import { confusionOf } from '../../../lib/classes/statistics/confusion';
import { familyRates } from '../../../lib/classes/statistics/family-rates';
import { analyseTest } from '../../../lib/classes/statistics/item-analysis';
import { figuresOf } from '../../../lib/classes/statistics/learner-figures';
import { scoreError } from '../../../lib/classes/statistics/score-error';
import { needsOf } from '../../../lib/classes/statistics/teach-next';
import { answer, falseMark, fault } from './statistics-answers';

const NAMES = ['open-head', 'thin-joint', 'no-lintel', 'proud-unit'] as const;
const name = fc.constantFrom(...NAMES);
const sure = fc.constantFrom<1 | 2 | 3>(1, 2, 3);
const answers = fc.array(
  fc
    .record({
      learner: fc.constantFrom('ann', 'bo', 'cy'),
      place: fc.integer({ min: 1, max: 9 }),
      score: fc.double({ min: 0, max: 1, noNaN: true }),
      faults: fc.array(fc.tuple(name, fc.option(name), sure), { maxLength: 4 }),
      falseMarks: fc.array(fc.tuple(name, sure), { maxLength: 3 }),
    })
    .map(({ faults, falseMarks, ...given }) =>
      answer({
        ...given,
        faults: faults.map(([truth, named, level]) => fault(`${truth}>${named ?? ''}`, level)),
        falseMarks: falseMarks.map(([said, level]) => falseMark(said, level)),
      }),
    ),
  { maxLength: 30 },
);

const sum = (values: Iterable<number>) => [...values].reduce((total, value) => total + value, 0);

test('every fault met stands in its row once, every false mark in the last', () => {
  fc.assert(
    fc.property(answers, (given) => {
      const { rows, nothingThere } = confusionOf(given);
      for (const { met, named, notFound } of rows) expect(sum(named.values()) + notFound).toBe(met);
      expect(sum(rows.map(({ met }) => met))).toBe(sum(given.map(({ faults }) => faults.length)));
      expect(sum(nothingThere.values())).toBe(figuresOf(given).falseMarks);
    }),
  );
});

test('the order of the answers does not matter', () => {
  fc.assert(
    fc.property(answers, (given) => {
      const turned = [...given].reverse();
      expect(familyRates(turned)).toEqual(familyRates(given));
      expect(needsOf(turned, 3)).toEqual(needsOf(given, 3));
    }),
  );
});

test('limits hold the share, and a fault is called by name no oftener than found', () => {
  fc.assert(
    fc.property(answers, (given) => {
      for (const { hit, found, named, met } of familyRates(given)) {
        expect(named).toBeLessThanOrEqual(found);
        expect(found).toBeLessThanOrEqual(met);
        if (hit === null) continue;
        expect(hit.low).toBeLessThanOrEqual(hit.share);
        expect(hit.high).toBeGreaterThanOrEqual(hit.share);
      }
    }),
  );
});

test('mirrored scores give the same reliability, and no alpha is above 1', () => {
  const table = fc
    .tuple(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 8 }))
    .chain(([learners, items]) =>
      fc.array(fc.array(fc.constantFrom(0, 1), { minLength: items, maxLength: items }), {
        minLength: learners,
        maxLength: learners,
      }),
    );
  fc.assert(
    fc.property(table, (scores) => {
      const figures = analyseTest(scores);
      const mirrored = analyseTest(scores.map((row) => row.map((score) => 1 - score)));
      if (figures.alpha === null) expect(mirrored.alpha).toBe(null);
      else {
        expect(figures.alpha).toBeLessThanOrEqual(1 + 1e-12);
        expect(mirrored.alpha).toBeCloseTo(figures.alpha, 9);
      }
    }),
  );
});

test('whatever the walls scored, the error told is no less than their standard error, and falls with more walls', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 60 }),
      (scores) => {
        const walls = scores.length;
        const mean = scores.reduce((sum, score) => sum + score, 0) / walls;
        const spread = scores.reduce((sum, score) => sum + (score - mean) ** 2, 0) / (walls - 1);
        const error = scoreError(mean, walls);
        expect(error).toBeGreaterThanOrEqual(Math.sqrt(spread / walls) - 1e-12);
        expect(scoreError(mean, 4 * walls + 10)).toBeLessThan(error);
      },
    ),
  );
});
