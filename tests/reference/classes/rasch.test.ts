import { describe, expect, test } from 'vitest';
import { abilityOf, calibrate } from '../../../lib/classes/statistics/rasch';
import { LSAT_PERSONS } from './lsat-6';

const toTally = (got: number) => ({ got, of: 1 });

// Rasch model with slope 1 by marginal maximum likelihood: D. Rizopoulos, "ltm", Journal of Statistical Software 17(5),
// 2006, table for the LSAT data: -2.872 -1.063 -.258 -1.388 -2.219, log-likelihood -2473.05.
test('difficulties of LSAT section 6 and the log-likelihood', () => {
  const { difficulties, logLikelihood } = calibrate(
    LSAT_PERSONS.map((row) => row.map(toTally)),
    Number.POSITIVE_INFINITY,
  );
  [-2.872, -1.063, -0.258, -1.388, -2.219].forEach((expected, item) => {
    expect(difficulties[item]).toBeCloseTo(expected, 3);
  });
  expect(logLikelihood).toBeCloseTo(-2473.05, 2);
});

// Worked in another language (SciPy): five questions at -1, -.5, 0, .5, 1 logits, standard normal prior.
describe('ability of one learner', () => {
  const difficulties = [-1, -0.5, 0, 0.5, 1];
  test.each([
    ['11111', 1.2363615, 0.7343291],
    ['11100', 0.2370111, 0.6896751],
    ['00000', -1.2363615, 0.7343291],
  ])('%s', (pattern, ability, standardError) => {
    const answers = difficulties.map((difficulty, i) => ({ difficulty, ...toTally(Number(pattern[i])) }));
    const estimate = abilityOf(answers);
    expect(estimate.ability).toBeCloseTo(ability, 7);
    expect(estimate.standardError).toBeCloseTo(standardError, 7);
  });

  test('without answers it is the prior', () => {
    expect(abilityOf([])).toEqual({ ability: 0, standardError: 1 });
  });

  test('ten answers to one question count as ten', () => {
    const once = Array.from({ length: 10 }, (_, i) => ({ difficulty: 0.5, ...toTally(i < 7 ? 1 : 0) }));
    expect(abilityOf([{ difficulty: 0.5, got: 7, of: 10 }]).ability).toBeCloseTo(abilityOf(once).ability, 12);
  });
});

// Standard error of a difficulty at p = .5 with abilities known, 1 / sqrt(n/4): .632 for 10 answers, .365 for 30.
test('a difficulty nobody missed stays finite with a prior', () => {
  const { difficulties } = calibrate(
    Array.from({ length: 12 }, () => [
      { got: 3, of: 3 },
      { got: 0, of: 3 },
    ]),
    1,
  );
  expect(difficulties[0]).toBeGreaterThan(-4);
  expect(difficulties[0]).toBeLessThan(-1);
  expect(difficulties[1]).toBeCloseTo(-(difficulties[0] ?? 0), 9);
});

test('a bad tally is refused with its place', () => {
  expect(() => calibrate([[{ got: 2, of: 1 }]], 1)).toThrow('rows.0.0: 2 right of only 1');
  expect(() => abilityOf([{ difficulty: 0, got: 0.5, of: 1 }])).toThrow(
    'answers.0.got: 0.5 is not a whole number',
  );
});
