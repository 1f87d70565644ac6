import { MarkingError, requireFinite } from '../../marking/marking-error';

/** One question of a test: a fault, or a whole wall. */
export interface ItemFigures {
  /** Difficulty: the mean score, 0 to 1. High is easy. */
  readonly p: number;
  /** Correlation with the total of the OTHER items; null when one of the two does not vary. */
  readonly discrimination: number | null;
  /** Alpha of the test without this item; null where alpha cannot be had. */
  readonly alphaWithout: number | null;
}

export interface TestFigures {
  readonly learners: number;
  /** Of the total score, in items. */
  readonly mean: number;
  /** Standard deviation of the total score, dividing by the number of learners. */
  readonly deviation: number;
  /** Cronbach's alpha, for items of 0 and 1 the same as KR-20; null under two items, or when all totals are equal. */
  readonly alpha: number | null;
  /** Standard error of measurement of the total score, in items: deviation times sqrt(1 - alpha). */
  readonly standardError: number | null;
  readonly items: readonly ItemFigures[];
}

/**
 * Classical figures of a test from scores of 0 to 1, one row a learner, one column an item. All variances divide by the
 * number of learners: KR-20 (Kuder and Richardson) is only equal to alpha when both parts use the same one.
 * Throws MarkingError for no learners, rows of unequal length, or a score outside 0 to 1.
 */
export function analyseTest(scores: readonly (readonly number[])[]): TestFigures {
  const width = requireTable(scores);
  const totals = scores.map(sum);
  const alpha = alphaOf(scores, width);
  const deviation = Math.sqrt(variance(totals));
  return {
    learners: scores.length,
    mean: mean(totals),
    deviation,
    alpha,
    standardError: alpha === null ? null : deviation * Math.sqrt(1 - alpha),
    items: Array.from({ length: width }, (_, item) => {
      const column = scores.map((row) => row[item] ?? 0);
      const rest = totals.map((total, learner) => total - (column[learner] ?? 0));
      return {
        p: mean(column),
        discrimination: correlation(column, rest),
        alphaWithout: alphaOf(
          scores.map((row) => row.filter((_, other) => other !== item)),
          width - 1,
        ),
      };
    }),
  };
}

/** How many items like its own a test of `items` needs for the wanted reliability; both reliabilities between 0 and 1. */
export function itemsFor(wanted: number, reliability: number, items: number): number {
  // Ends are left out: no length reaches 1, and from 0 none gets anywhere.
  for (const value of [wanted, reliability]) {
    if (!(value > 0 && value < 1)) throw new MarkingError(`reliability: ${value} is not between 0 and 1`);
  }
  return Math.ceil((items * wanted * (1 - reliability)) / (reliability * (1 - wanted)));
}

function alphaOf(scores: readonly (readonly number[])[], items: number): number | null {
  const spread = variance(scores.map(sum));
  if (items < 2 || spread === 0) return null;
  const own = sum(Array.from({ length: items }, (_, item) => variance(scores.map((row) => row[item] ?? 0))));
  return (items / (items - 1)) * (1 - own / spread);
}

/** Pearson's; null when a side does not vary. */
export function correlation(first: readonly number[], second: readonly number[]): number | null {
  const [meanFirst, meanSecond] = [mean(first), mean(second)];
  const together = mean(first.map((value, i) => (value - meanFirst) * ((second[i] ?? 0) - meanSecond)));
  const spread = Math.sqrt(variance(first) * variance(second));
  // Sums of thirds leave a trace where there is no spread.
  return spread < 1e-12 ? null : together / spread;
}

function requireTable(scores: readonly (readonly number[])[]): number {
  const width = scores[0]?.length ?? 0;
  if (width === 0) throw new MarkingError('scores: no learner or no item');
  scores.forEach((row, learner) => {
    if (row.length !== width) {
      throw new MarkingError(`scores.${learner}: ${row.length} items in a test of ${width}`);
    }
    row.forEach((score, item) => {
      requireFinite(`scores.${learner}.${item}`, score);
      if (score < 0 || score > 1)
        throw new MarkingError(`scores.${learner}.${item}: ${score} is not from 0 to 1`);
    });
  });
  return width;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length;
}

function variance(values: readonly number[]): number {
  const middle = mean(values);
  return mean(values.map((value) => (value - middle) * (value - middle)));
}
