import { expect, test } from 'vitest';
import { formatPair, parsePair } from '../../../lib/drills/pair/kept-pair';

const WORK = { side: 2, marks: [{ part: 'A3.2', fault: 'proud-unit' }] } as const;
const isPart = (side: 1 | 2, id: string) => side === 2 && id === 'A3.2';

test('work on a pair is read as it was written', () => {
  expect(parsePair(formatPair(WORK), isPart)).toEqual(WORK);
  // The sample of version 1, as it was first released.
  expect(parsePair('{"version":1,"side":2,"marks":[{"part":"A3.2","fault":"proud-unit"}]}', isPart)).toEqual(
    WORK,
  );
});

test.each([
  ['nothing kept', null],
  ['a later version', '{"version":2,"side":2,"marks":[]}'],
  ['no side', '{"version":1,"marks":[]}'],
  ['a part of the other wall', '{"version":1,"side":1,"marks":[{"part":"A3.2","fault":"proud-unit"}]}'],
  ['a fault that is none', '{"version":1,"side":2,"marks":[{"part":"A3.2","fault":"odd"}]}'],
  ['no text of ours', '{'],
])('is not taken up: %s', (_, text) => {
  expect(parsePair(text, isPart)).toBe(null);
});
