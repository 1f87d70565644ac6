import { expect, test } from 'vitest';
import { alongTape, upTape } from '../../lib/drawing/tape';

// A tape begins with 0 at the end it is held to; it is numbered every half metre in millimetres, or at each stud mark of 16 in.
test.each([
  ['mm', 500, ['0', '500', '1000']],
  ['inches', 406.4, ['0', '16', '32']],
] as const)('a tape in %s has its numbers where they lie, from 0 on', (system, apart, texts) => {
  const along = alongTape(250, 1100, 0, system).labels;
  expect(along.map(({ text }) => text)).toEqual(texts);
  along.forEach(({ at }, index) => {
    expect(at[0]).toBeCloseTo(250 + index * apart, 6);
  });
  const up = upTape(0, 1100, system).labels;
  expect(up.map(({ text }) => text)).toEqual(texts);
  up.forEach(({ at }, index) => {
    expect(at[1]).toBeCloseTo(index * apart, 6);
  });
});
