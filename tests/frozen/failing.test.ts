import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { failingTable, TABLE } from './failing-table';

/** A change that is meant is accepted by: FROZEN=failing npx vitest run tests/frozen/failing.test.ts */
const isAccepted = process.env.FROZEN === 'failing';

test('mechanisms make of the walls what they made, and the walls allow the causes they allowed', () => {
  const now = failingTable();
  if (isAccepted) writeFileSync(TABLE, `${now.join('\n')}\n`);
  expect(now).toEqual(readFileSync(TABLE, 'utf8').trimEnd().split('\n'));
});
