import { spawnSync } from 'node:child_process';
import { createServer } from 'node:net';
import { hostname } from 'node:os';
import { describe, expect, test } from 'vitest';
import { addressOf, freePort, refuseBusy } from './address.mjs';
import { tallyOfReport } from './tally.mjs';

describe('where to listen', () => {
  test.each([
    [{}, { port: 3000, host: '127.0.0.1' }],
    [
      { PORT: '', HOSTNAME: '' },
      { port: 3000, host: '127.0.0.1' },
    ],
    [{ PORT: '1' }, { port: 1, host: '127.0.0.1' }],
    [
      { PORT: '65535', HOSTNAME: '0.0.0.0' },
      { port: 65535, host: '0.0.0.0' },
    ],
    // A shell's or a container's own doing, not a wish.
    [{ HOSTNAME: hostname() }, { port: 3000, host: '127.0.0.1' }],
  ])('%o', (env, address) => {
    expect(addressOf(env)).toEqual(address);
  });

  test.each(['0', '65536', '-1', '80.5', '3e3', '0x50', 'abc', ' '])('PORT "%s" is refused', (text) => {
    expect(() => addressOf({ PORT: text })).toThrow(
      `PORT must be a whole number from 1 to 65535. It is "${text}".`,
    );
  });

  test('a port that is taken is refused, and is free again afterwards', async () => {
    const port = await freePort();
    const other = createServer();
    await new Promise((resolve) => other.listen(port, '127.0.0.1', resolve));
    const address = { port, host: '127.0.0.1' };
    await expect(refuseBusy(address)).rejects.toThrow(
      `Port ${port} on 127.0.0.1 is taken by another program.`,
    );
    await new Promise((resolve) => other.close(resolve));
    expect(await refuseBusy(address)).toBe(undefined);
  });

  // Of the Fetch Standard's list of barred ports: managesieve and X11.
  test.each([4190, 6000])('port %i, which no browser opens, is refused', async (port) => {
    await expect(refuseBusy({ port, host: '127.0.0.1' })).rejects.toThrow(
      `Browsers do not open port ${port}. Choose another one: PORT=3000 npm start`,
    );
  });

  test('`npm start` with a wrong port ends at once with one sentence', () => {
    const { status, stderr } = spawnSync(process.execPath, ['tests/commands/start.mjs'], {
      env: { ...process.env, PORT: 'eighty' },
      encoding: 'utf8',
    });
    expect(stderr).toBe('\nPORT must be a whole number from 1 to 65535. It is "eighty".\n');
    expect(status).toBe(1);
  });
});

test('what did not run has not passed', () => {
  const report = {
    testResults: [
      {
        name: 'a.test.ts',
        status: 'failed',
        message: '',
        assertionResults: [
          { status: 'passed', fullName: 'one' },
          { status: 'passed', fullName: 'two' },
          { status: 'failed', fullName: 'three' },
          { status: 'skipped', fullName: 'four' },
        ],
      },
      { name: 'b.test.ts', status: 'failed', message: 'no such module\n  at line 3', assertionResults: [] },
    ],
  };
  expect(tallyOfReport(report)).toEqual({
    passed: 2,
    failed: 3,
    failures: ['a.test.ts: three (failed)', 'a.test.ts: four (skipped)', 'b.test.ts: no such module'],
  });
});
