import { describe, expect, test } from 'vitest';
import { cohenKappa, fleissKappa, verdictTable, weightedKappa } from '../../lib/marking/agreement';
import { brierScore } from '../../lib/marking/confidence';
import { naturalLog } from '../../lib/marking/log-and-exp';
import { normalDensity, normalQuantile } from '../../lib/marking/normal';
import { correctedRate, soundOrFaulty } from '../../lib/marking/sound-or-faulty';
import { sampleTable } from '../lib/marking/samples';

describe('signal detection', () => {
  // Source: manual of the open package statpsych (GitHub dgbonett/statpsych, commit 615c283, man/signal.Rd), read there.
  test('published example 82, 18, 46, 54', () => {
    const figures = soundOrFaulty({ hits: 82, misses: 18, falseAlarms: 46, soundCalls: 54 });
    expect(figures.dPrime).toBeCloseTo(1.002793, 6);
    expect(figures.criterion).toBeCloseTo(-0.4019603, 7);
    // The manual's "threshold" is the point on the noise scale, -z(F).
    expect(figures.criterion + figures.dPrime / 2).toBeCloseTo(0.09943603, 7);
  });

  // One public package divides by (hits + 0.5) + misses + 1. That would give 0.9388 for 9 of 10.
  test('9 of 10 is not divided by 11.5', () => {
    expect(normalQuantile(correctedRate(9, 10))).toBeCloseTo(1.0968, 4);
    expect(normalQuantile(9.5 / 11.5)).toBeCloseTo(0.9388, 4);
  });
});

// Source: Python 3 standard library, statistics.NormalDist (inv_cdf, pdf) and math.log, run for this test.
describe('normal distribution', () => {
  test.each([
    [0.25, -0.6744897501960817],
    [0.975, 1.9599639845400536],
    [0.95, 1.6448536269514715],
    [0.9, 1.2815515655446008],
    [0.075, -1.4395314709384557],
    [0.076, -1.4325027208258114],
    [0.8168317, 0.9033567243083209],
    [0.001, -3.090232306167813],
    [1e-10, -6.361340902404056],
    [1e-20, -9.262340089798405],
    [1e-300, -37.0470962993612],
  ])('quantile of %d', (p, expected) => {
    expect(normalQuantile(p)).toBeCloseTo(expected, 12);
  });

  test.each(sampleTable('1 0.24197072451914337 / 2.5 0.01752830049356854'))(
    'density at %d',
    (z, expected) => {
      expect(normalDensity(z)).toBeCloseTo(expected, 14);
    },
  );

  test.each([
    [7, 1.9459101490553132],
    [1e-20, -46.051701859880914],
    [0.9999, -0.00010000500033334732],
    [3e8, 19.519293032620475],
  ])('logarithm of %d', (x, expected) => {
    expect(naturalLog(x)).toBeCloseTo(expected, 12);
  });
});

// Source: J. Cohen's table of 1968 (N = 200) with its results, manual of the open package psych, page cohen.kappa.
test.each([
  ['all errors alike', sampleTable('0 1 1 / 1 0 1 / 1 1 0'), 0.492],
  ['weights 1, 3, 6', sampleTable('0 1 3 / 1 0 6 / 3 6 0'), 0.348],
  ['weights that are not symmetric', sampleTable('0 1 4 / 1 0 6 / 2 2 0'), 0.353],
])('published weighted kappa: %s', (_, costs, expected) => {
  const table = sampleTable('0.44 0.07 0.09 / 0.05 0.2 0.05 / 0.01 0.03 0.06');
  expect(weightedKappa(table, costs)).toBeCloseTo(expected, 3);
});

// The rows are from memory (the well-known example of ten cases and fourteen judges); the result is computed and
// agrees with the known 0.210. Support only: the cases worked by hand decide, in tests/lib.
test("Fleiss' kappa, rows from memory", () => {
  const rows = sampleTable(
    '0 0 0 0 14 / 0 2 6 4 2 / 0 0 3 5 6 / 0 3 9 2 0 / 2 2 8 1 1 / 7 7 0 0 0 / 3 2 6 3 0 / 2 5 3 2 2 / 6 5 2 1 0 / 0 2 2 3 7',
  );
  expect(fleissKappa(rows)).toBeCloseTo(0.2099307, 7);
});

// Measurement systems analysis of the car industry (AIAG, 4th edition), attribute study. Cross-tables and printed
// kappas are from memory, the values here computed from them. Support only.
test.each([
  ['A', 45, 3, 5, 97, 0.8788],
  ['B', 45, 3, 2, 100, 0.923],
  ['C', 42, 6, 9, 93, 0.774],
])('attribute study, rows from memory: appraiser %s', (_, hits, misses, falseAlarms, soundCalls, kappa) => {
  const counts = { hits, misses, falseAlarms, soundCalls };
  expect(cohenKappa(verdictTable(counts))).toBeCloseTo(kappa, 4);
});

// Documentation example of scikit-learn's brier_score_loss; input from memory, result computed. Support only.
test('Brier score, input from memory', () => {
  const claims = [
    [0.1, false],
    [0.9, true],
    [0.8, true],
    [0.3, false],
  ] as const;
  expect(brierScore(claims.map(([claimed, right]) => ({ claimed, right })))).toBeCloseTo(0.0375, 12);
});
