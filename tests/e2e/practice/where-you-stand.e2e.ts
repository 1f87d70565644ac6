import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { formatRecord } from '../../../lib/learning/record';
import { tieWall } from '../../lib/learning/samples';
import { LOOKS, openBrowser, visit } from '../browser';
import { lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

/** Ten walls missed, then ten found, and ten sound walls with something called on one. */
const record = formatRecord([
  ...Array.from({ length: 10 }, (_, number) => tieWall(number, 0, 'missed')),
  ...Array.from({ length: 10 }, (_, number) => tieWall(20 + number, 1, 'found')),
  ...Array.from({ length: 10 }, (_, number) => tieWall(40 + number, 2, 'sound', number === 0 ? 1 : 0)),
]);

describe.each(LOOKS)('where you stand at $width px, $colours', (look) => {
  test('says where to begin when nothing is known, then what the record holds, and prints on one sheet', async () => {
    const { page, problems, close } = await visit(browser, '/practise/where-you-stand', look);
    const to = (path: string) => page.goto(new URL(path, page.url()).href);
    await page.getByText('There is nothing to tell yet.').waitFor();
    await page.getByRole('link', { name: 'Begin with ten minutes' }).waitFor();
    await lookAt(page, 'stand-empty', look);

    await to('/practise/record');
    const file = { name: 'practice-record.json', mimeType: 'application/json', buffer: Buffer.from(record) };
    await page.getByLabel('A practice record').setInputFiles(file);
    await page.getByText('30 of 30 attempts in the file were new').waitFor();
    await to('/practise');
    await page.getByRole('link', { name: 'Where you stand' }).click();
    await page.getByText('30 walls read on your own').waitFor();
    for (const told of [
      // Wilson limits by hand, z² = 3.8415: 0 of 10 is 0 to 3.8415/13.8415 = 28 %; 9 of 10 is 60 to 98 %.
      'You read 0 % (between 0 % and 28 %) of walls 1 to 10 rightly, and 90 % (between 60 % and 98 %) of walls 21 to 30. That is better, and not by chance.',
      'Found and named: 10 of 20',
      'Called on sound walls: 1 of 10',
      '10 of 20 missed',
    ]) {
      await page.getByText(told).waitFor();
    }
    await lookAt(page, 'stand', look);
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.toString('latin1').match(/\/Type \/Page\b(?!s)/g)).toHaveLength(1);
    expect(problems).toEqual([]);
    await close();
  });
});
