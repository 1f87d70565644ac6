import { expect, test } from 'vitest';
import { heightDimension, lengthDimension } from '../../lib/drawing/dimension';

// A tape is read to the millimetre; a rule, on what is shorter than half a metre, to a tenth.
test.each([
  [499.6, '499.6 mm'],
  [450.4, '450.4 mm'],
  [500.4, '500 mm'],
  [609.6, '610 mm'],
])('a length of %d mm is written %s, along and up', (long, text) => {
  expect(lengthDimension(100, 100 + long, 0, 5, 10, 'mm').label.text).toBe(text);
  expect(heightDimension(100, 100 + long, 0, 5, 10, 'mm').label.text).toBe(text);
});
