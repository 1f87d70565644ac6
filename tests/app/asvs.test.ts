import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/**
 * The requirements of the OWASP Application Security Verification Standard 5.0.0, typed from the published list of the standard's own
 * repository (OWASP/ASVS, 5.0/docs_en/OWASP_Application_Security_Verification_Standard_5.0.0_en.csv): by section, level 1 and level 2.
 */
const SECTIONS: Readonly<Record<string, readonly [first: string, second: string]>> = {
  '1.1': ['', '1 2'],
  '1.2': ['1 2 3 4 5', '6 7 8 9'],
  '1.3': ['1 2', '3 4 5 6 7 8 9 10 11'],
  '1.4': ['', '1 2 3'],
  '1.5': ['1', '2'],
  '2.1': ['1', '2 3'],
  '2.2': ['1 2', '3'],
  '2.3': ['1', '2 3 4'],
  '2.4': ['', '1'],
  '3.2': ['1 2', ''],
  '3.3': ['1', '2 3 4'],
  '3.4': ['1 2', '3 4 5 6'],
  '3.5': ['1 2 3', '4 5'],
  '3.7': ['', '1 2'],
  '4.1': ['1', '2 3'],
  '4.2': ['', '1'],
  '4.3': ['', '1 2'],
  '4.4': ['1', '2 3 4'],
  '5.1': ['', '1'],
  '5.2': ['1 2', '3'],
  '5.3': ['1 2', ''],
  '5.4': ['', '1 2 3'],
  '6.1': ['1', '2 3'],
  '6.2': ['1 2 3 4 5 6 7 8', '9 10 11 12'],
  '6.3': ['1 2', '3 4'],
  '6.4': ['1 2', '3 4'],
  '6.5': ['', '1 2 3 4 5'],
  '6.6': ['', '1 2 3'],
  '6.8': ['', '1 2 3 4'],
  '7.1': ['', '1 2 3'],
  '7.2': ['1 2 3 4', ''],
  '7.3': ['', '1 2'],
  '7.4': ['1 2', '3 4 5'],
  '7.5': ['', '1 2'],
  '7.6': ['', '1 2'],
  '8.1': ['1', '2'],
  '8.2': ['1 2', '3'],
  '8.3': ['1', ''],
  '8.4': ['', '1'],
  '9.1': ['1 2 3', ''],
  '9.2': ['1', '2 3 4'],
  '10.1': ['', '1 2'],
  '10.2': ['', '1 2'],
  '10.3': ['', '1 2 3 4'],
  '10.4': ['1 2 3 4 5', '6 7 8 9 10 11'],
  '10.5': ['', '1 2 3 4 5'],
  '10.6': ['', '1 2'],
  '10.7': ['', '1 2 3'],
  '11.1': ['', '1 2'],
  '11.2': ['', '1 2 3'],
  '11.3': ['1 2', '3'],
  '11.4': ['1', '2 3 4'],
  '11.5': ['', '1'],
  '11.6': ['', '1'],
  '12.1': ['1', '2 3'],
  '12.2': ['1 2', ''],
  '12.3': ['', '1 2 3 4'],
  '13.1': ['', '1'],
  '13.2': ['', '1 2 3 4 5'],
  '13.3': ['', '1 2'],
  '13.4': ['1', '2 3 4 5'],
  '14.1': ['', '1 2'],
  '14.2': ['1', '2 3 4'],
  '14.3': ['1', '2 3'],
  '15.1': ['1', '2 3'],
  '15.2': ['1', '2 3'],
  '15.3': ['1', '2 3 4 5 6 7'],
  '16.1': ['', '1'],
  '16.2': ['', '1 2 3 4 5'],
  '16.3': ['', '1 2 3 4'],
  '16.4': ['', '1 2 3'],
  '16.5': ['', '1 2 3'],
  '17.1': ['', '1'],
  '17.2': ['', '1 2 3 4'],
  '17.3': ['', '1 2'],
};

/** '3.4.1 level 1'. */
const asked = Object.entries(SECTIONS).flatMap(([section, levels]) =>
  levels.flatMap((numbers, index) =>
    numbers
      .split(' ')
      .filter((number) => number !== '')
      .map((number) => `${section}.${number} level ${index + 1}`),
  ),
);

const text = readFileSync('app/access/asvs.md', 'utf8');
const rows = text
  .split('\n')
  .map((line) => line.split('|').map((cell) => cell.trim()))
  .filter(([, number = '']) => /^\d+\.\d+\.\d+$/.test(number))
  .map(([, number = '', level = '', asks = '', how = '']) => ({ number, level, asks, how }));

/** What stands in code marks and is a file by its look, not a setting, a command or a cookie. */
const filesNamed = (cell: string) =>
  [...cell.matchAll(/`([^`\s]+)`/g)]
    .map(([, name = '']) => name)
    .filter((name) => /\.(tsx?|md|json)$/.test(name));

test('the list is the standard’s: 70 requirements of level 1, 183 of level 2', () => {
  expect(asked.filter((each) => each.endsWith('level 1'))).toHaveLength(70);
  expect(asked.filter((each) => each.endsWith('level 2'))).toHaveLength(183);
});

test('each requirement has its row, once', () => {
  const found = rows.map(({ number, level }) => `${number} level ${level}`);
  expect([...found].sort()).toEqual([...asked].sort());
});

describe('each row', () => {
  test('says in few words what is asked', () => {
    const long = rows.filter(({ asks }) => asks === '' || asks.split(' ').length > 12);
    expect(long).toEqual([]);
  });

  test('says how it is met and where, or why not', () => {
    const vague = rows.filter(({ how }) => {
      const [, verdict, why = ''] = /^(met|does not apply|not met)\b:? ?(.*)$/.exec(how) ?? [];
      if (verdict === undefined || why === '') return true;
      // What is met by what is written down here needs no other file.
      return verdict === 'met' && filesNamed(how).length === 0 && !/^above/.test(why);
    });
    expect(vague).toEqual([]);
  });
});

test('every file named is there', () => {
  const named = [...new Set(filesNamed(text))];
  expect(named.length).toBeGreaterThan(100);
  expect(named.filter((name) => !existsSync(name))).toEqual([]);
});
