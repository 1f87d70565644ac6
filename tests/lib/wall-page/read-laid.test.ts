import { expect, test } from 'vitest';
import { parseCode } from '../../../lib/generate/wall-code';
import { parseLaid } from '../../../lib/wall-page/read-laid';
import { layForSetWork } from '../../../lib/wall-page/wall-to-read';

const LAID = layForSetWork(parseCode('492-SJMH-3U5'));

test('a wall the site sent reads as it was laid', () => {
  expect(parseLaid(JSON.stringify(LAID))).toEqual(LAID);
});

test.each([
  ['the page of a network that wants a sign-in', '<!doctype html>'],
  ['no wall', JSON.stringify({ ...LAID, wall: undefined })],
  ['a wall of another model', JSON.stringify({ ...LAID, wall: { ...LAID.wall, version: 1 } })],
  ['a wall without units', JSON.stringify({ ...LAID, wall: { ...LAID.wall, units: null } })],
  ['an unknown topic', JSON.stringify({ ...LAID, topic: 'cooking' })],
])('%s is refused', (_, text) => {
  expect(() => parseLaid(text)).toThrow(TypeError);
});
