import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tidyCode } from '../../app/accounts/codes';
import { isEasilyGuessed } from '../../app/accounts/guessed-password';
import { emailAddress, newPassword, personName } from '../../app/accounts/password-rules';
import { readBody } from '../../app/request/read-body';
import { readRoster } from '../../app/set-work/roster-lines';
import { checkRoster } from '../../lib/classes/roster';
import { parseMarks } from '../../lib/exercise/read-marks';
import { parseCode } from '../../lib/generate/wall-code';
import { parseNumber } from '../../lib/questions/parse-number';

/** Long enough that work that grows with the square would take minutes of any machine. */
const LETTERS = 300_000;
/** Processor time, not time on the clock: a busy machine does not count. Reading once through takes some hundredths of it. */
const MOST_MS = 20_000;

const swallow = (read: () => unknown) => {
  try {
    read();
  } catch (error) {
    // Refusing is fine, and so are the words of any reader; how long it takes is what is looked at.
    if (!(error instanceof Error)) throw error;
  }
};

const READERS: Readonly<Record<string, (text: string) => unknown>> = {
  'a roster': (text) => checkRoster(readRoster(text).lines, []),
  'a roster with times': (text) => checkRoster(readRoster(`name,time\nAnn,100${text}x`).lines, []),
  'a group code': tidyCode,
  'a new password': (text) => [
    isEasilyGuessed(text.slice(0, 128)),
    newPassword.safeParse(text.slice(0, 128)),
  ],
  'a name': (text) => personName.safeParse(text),
  'an e-mail address': (text) => emailAddress.safeParse(text),
  marks: parseMarks,
  'a wall code': parseCode,
  'a number': (text) => parseNumber(text, 'mm'),
};

const piece = fc.constantFrom(
  ' ',
  '\t',
  '\n',
  ',',
  ', ',
  '"',
  '\\"',
  '%',
  '1',
  '1 ',
  "1' ",
  'a',
  'a@',
  '.a',
  '-',
  '[',
  '<',
  '\u0301',
);
const long = fc
  .tuple(
    fc.string({ maxLength: 3 }),
    fc.array(piece, { minLength: 1, maxLength: 3 }),
    fc.string({ maxLength: 3 }),
  )
  .map(([begin, pieces, end]) => {
    const pump = pieces.join('');
    return `${begin}${pump.repeat(LETTERS / pump.length)}${end}`;
  });

test.each(Object.entries(READERS))('%s of 300,000 signs is read or refused in bounded work', (_, read) => {
  fc.assert(
    fc.property(long, (text) => {
      const before = process.cpuUsage();
      swallow(() => read(text));
      const { user, system } = process.cpuUsage(before);
      expect((user + system) / 1_000).toBeLessThan(MOST_MS);
    }),
    { numRuns: 25 },
  );
});

test('a body of 300,000 signs is read or refused in bounded work', async () => {
  await fc.assert(
    fc.asyncProperty(long, async (text) => {
      const request = new Request('http://walls.test', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(text),
      });
      const before = process.cpuUsage();
      await readBody(request, 4 * LETTERS).catch(() => undefined);
      const { user, system } = process.cpuUsage(before);
      expect((user + system) / 1_000).toBeLessThan(MOST_MS);
    }),
    { numRuns: 25 },
  );
});
