import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { LOOKS, openBrowser, visit } from '../browser';
import { firstWall, lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const known = firstWall({ topic: 'joints', kind: 'gable-end', difficulty: 1, rules: 'canada' }, () => true);

describe.each(LOOKS)('a wall at $width px, $colours', (look) => {
  test('is not opened by a wrong code, which stays in its box', async () => {
    const wrong = `${known.code.slice(0, -1)}${known.code.endsWith('2') ? '3' : '2'}`;
    const { page, problems, close } = await visit(browser, `/walls/${wrong}`, look);
    expect(await page.getByLabel('Wall code').inputValue()).toBe(wrong);
    await lookAt(page, '11-wrong-code', look);
    await page.getByLabel('Wall code').fill('3K7-Q2WF-9T!');
    await page.getByRole('button', { name: 'Open the wall' }).click();
    await page.getByText('The sign "!" is never used').waitFor();
    expect(await page.getByLabel('Wall code').inputValue()).toBe('3K7-Q2WF-9T!');
    await lookAt(page, '12-walls', look);
    await page.getByLabel('Wall code').fill(known.code.toLowerCase().replaceAll('-', ' '));
    await page.getByRole('button', { name: 'Open the wall' }).click();
    await page.waitForURL(`**/walls/${known.code}`);
    expect(problems).toEqual([]);
    await close();
  });

  test('is laid from the form, and a wrong wall number is said in place', async () => {
    const { page, problems, close } = await visit(browser, '/walls', look);
    await page.getByLabel('Topic').selectOption('Ties');
    await page.getByLabel('How hard').selectOption('4 · Hard to see');
    await page.getByLabel(/^Wall number/).fill('twelve');
    await page.getByRole('button', { name: 'Show the wall' }).click();
    await page.getByText('“twelve” is not a whole number').first().waitFor();
    expect(await page.getByLabel('Topic').inputValue()).toBe('ties');
    expect(await page.getByLabel(/^Wall number/).inputValue()).toBe('twelve');
    await page.getByLabel(/^Wall number/).fill('12');
    await page.getByRole('button', { name: 'Show the wall' }).click();
    await page.waitForURL(/\/walls\/[0-9A-Z]{3}-[0-9A-Z]{4}-[0-9A-Z]{3}$/);
    await lookAt(page, '13-ties', look);
    expect(problems).toEqual([]);
    await close();
  });
});
