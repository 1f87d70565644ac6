import { expect, test } from 'vitest';
import { severityOf } from '../../../lib/exercise/wall-probe';

test.each([
  ['a bed of 20 where 15 is the most', 5, 15, 'mm', 1 / 3],
  ['a bearing of 80 where 90 is the least', -10, 90, 'mm', 1 / 9],
  ['a quarter over a limit of 1', 0.25, 1, 'mm', 0.25],
  ['three times the limit counts as one', 30, 15, 'mm', 1],
  ['anything where nothing is allowed', 6, 0, 'mm', 1],
  ['what is missing', -1, 4, 'there or not', 1],
] as const)('%s: severity', (_, margin, limit, unit, severity) => {
  expect(severityOf({ margin, limit, unit })).toBeCloseTo(severity, 12);
});
