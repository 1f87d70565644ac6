import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { GOLDENS } from './goldens';

const FOLDER = 'tests/walls';

/**
 * To accept a changed drawing, name its file, one at a time, and look at it before and after:
 * GOLDEN=readme-wall npx vitest run tests/walls
 */
const ACCEPTED = process.env.GOLDEN;

test.each(GOLDENS)('$name', ({ name, draw }) => {
  const file = join(FOLDER, `${name}.svg`);
  const drawn = draw();
  if (ACCEPTED === name) writeFileSync(file, drawn);
  // Compared by lines, so that a failure shows the shape that moved and not the whole file.
  const kept = readFileSync(file, 'utf8').split('\n');
  const now = drawn.split('\n');
  const apart = now.findIndex((line, index) => line !== kept[index]);
  expect([apart, now[apart], now.length]).toEqual([-1, undefined, kept.length]);
});

test('every drawing in the folder is regenerated here, and they are few', () => {
  const kept = readdirSync(FOLDER).filter((name) => name.endsWith('.svg'));
  expect(kept.sort()).toEqual(GOLDENS.map(({ name }) => `${name}.svg`).sort());
  expect(kept.length).toBeLessThanOrEqual(15);
});
