import { expect, test } from 'vitest';
import { boundAt } from '../../../lib/limits/bound';
import { RULE_SETS } from '../../../lib/limits/limit';
import { namedLimitOf } from '../../../lib/limits/limits';
import { SHOWN_FIGURES } from './shown-figures';

const ROWS = RULE_SETS.flatMap((rules) =>
  SHOWN_FIGURES[rules].map(([id, figure, source]) => ({ rules, id, figure, source })),
);

test.each(ROWS)('$rules shows $id as its source has it', ({ rules, id, figure, source }) => {
  const limit = namedLimitOf(rules, id);
  expect(limit?.rules).toBe(rules);
  // Inches are not whole in binary: figures are held against each other to a millionth.
  expect(limit && boundAt(limit, {}), source).toBeCloseTo(figure, 6);
});
