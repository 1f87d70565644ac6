import { spawnSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import type { Limit } from '../../../lib/limits/limit';

/** The command as npm runs it. */
function limits(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', 'app/commands/limits.ts', ...args],
    { encoding: 'utf8' },
  );
  return { status, stdout, stderr };
}

describe('npm run limits', () => {
  test('--json prints a limit as it stands; a step without end is null; no last bits of a double', () => {
    const { status, stdout, stderr } = limits('--json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const all = JSON.parse(stdout) as readonly Limit[];
    const find = (rules: string, id: string) =>
      all.find((limit) => limit.rules === rules && limit.id === id)?.bound;
    expect(find('canada', 'mortar-life')).toEqual({
      form: 'stepped',
      by: 'air temperature',
      steps: [
        { upTo: 24.999, value: 150 },
        { upTo: null, value: 90 },
      ],
    });
    expect(find('good-practice', 'angle-leg')).toEqual({ form: 'number', value: 76.2 });
    expect(find('canada', 'overhang-share')).toEqual({ form: 'share-of-depth', share: 1 / 3 });
    expect(new Set(all.map(({ rules }) => rules)).size).toBe(5);
  });

  test('--rules keeps one rule set, in words without --json', () => {
    const { status, stdout } = limits('--rules', 'ontario');
    expect(status).toBe(0);
    expect(stdout).toContain(
      'Ontario (2024)  lintel-bearing\n  Steel lintel, bearing at each end: at least 150 mm (5 7/8 in)\n',
    );
    expect(stdout).not.toContain('Canada (NBC 2020)');
  });

  test.each<[args: readonly string[], says: string]>([
    [
      ['--rules', 'mars'],
      '--rules: "mars" is not one of canada, ontario, united-states, united-kingdom, good-practice\n',
    ],
    [['--colour'], "Unknown option '--colour' (--help lists the options)\n"],
    [['--rules'], "Option '--rules <value>' argument missing (--help lists the options)\n"],
  ])('%j is refused in a sentence', (args, says) => {
    expect(limits(...args)).toEqual({ status: 2, stdout: '', stderr: says });
  });
});
