import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';

test('the rooms of the house are there', () => {
  expect(readdirSync('.')).toEqual(expect.arrayContaining(['app', 'content', 'tests']));
});
