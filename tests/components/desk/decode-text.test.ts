import { expect, test } from 'vitest';
import { decodeText } from '../../../components/desk/roster-form';

// "José" as the code charts have it: é is E9 in windows-1252 and UTF-16, C3 A9 in UTF-8.
test.each([
  ['UTF-8', [0x4a, 0x6f, 0x73, 0xc3, 0xa9]],
  ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0x4a, 0x6f, 0x73, 0xc3, 0xa9]],
  ['windows-1252', [0x4a, 0x6f, 0x73, 0xe9]],
  ['UTF-16, low byte first', [0xff, 0xfe, 0x4a, 0, 0x6f, 0, 0x73, 0, 0xe9, 0]],
  ['UTF-16, high byte first', [0xfe, 0xff, 0, 0x4a, 0, 0x6f, 0, 0x73, 0, 0xe9]],
])('a roster in %s', (_, bytes) => {
  expect(decodeText(new Uint8Array(bytes))).toBe('José');
});
