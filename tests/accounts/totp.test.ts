import { expect, test } from 'vitest';
import { keyOf, RFC_CODES, RFC_KEY, totpOf } from './totp';

test.each(RFC_CODES)('the phone of the tests shows at %i seconds what RFC 6238 prints', (seconds, code) => {
  expect(totpOf(Buffer.from(RFC_KEY), seconds * 1000, 8)).toBe(code);
});

/** RFC 4648, section 10. */
test.each([
  ['MZXW6YQ', 'foob'],
  ['MZXW 6YTB OI', 'foobar'],
])('%s is the key %s', (typed, key) => {
  expect(keyOf(typed).toString()).toBe(key);
});
