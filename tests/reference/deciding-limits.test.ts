import { expect, test } from 'vitest';
import { type Bound, CHECK_LIMITS, type LimitId, RULE_SETS } from '../../lib/limits/limit';
import { limitsOf } from '../../lib/limits/limits';
import { TYPED_LIMITS } from './deciding-limits';

const DECIDING = RULE_SETS.flatMap((rules) =>
  limitsOf(rules).flatMap((limit) => {
    const id = CHECK_LIMITS.find((each) => each === limit.id);
    return id === undefined ? [] : [{ rules, id, bound: limit.bound }];
  }),
);

test('every limit that decides has an outside figure typed for it, and every typed figure decides', () => {
  const typed = RULE_SETS.flatMap((rules) => Object.keys(TYPED_LIMITS[rules]).map((id) => `${rules} ${id}`));
  expect(DECIDING.map(({ rules, id }) => `${rules} ${id}`).sort()).toEqual(typed.sort());
});

test.each(DECIDING)('$rules $id is the figure of its source', ({ rules, id, bound }) => {
  const [typed, source] = TYPED_LIMITS[rules][id as LimitId] ?? [];
  expect(rounded(bound), source).toEqual(rounded(typed));
});

/** Inches are not whole in binary: figures are held against each other to a millionth of a millimetre. */
function rounded(bound: Bound | undefined): unknown {
  return JSON.parse(
    JSON.stringify(bound ?? null, (_, value: unknown) =>
      typeof value === 'number' && Number.isFinite(value) ? Math.round(value * 1e6) / 1e6 : value,
    ),
  );
}
