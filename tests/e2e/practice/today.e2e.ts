import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { codeOf } from '../../../lib/generate/wall-code';
import { formatRecord } from '../../../lib/learning/record';
import { tieWall } from '../../lib/learning/samples';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

/** Of a reader who was shown a wall of ties, and then compared two. */
const wall = codeOf({ topic: 'ties', kind: 'plain-panel', difficulty: 1, rules: 'ontario', seed: 5 });
const record = formatRecord([
  { ...tieWall(1, 0, 'found'), kind: 'guided wall', wall },
  { ...tieWall(2, 0, 'missed'), kind: 'pair', wall },
]);
const GO_ON = 'Go on with today’s practice';
const ELEVEN_MINUTES = 660_000;

async function saySound(page: Page): Promise<void> {
  await awake(page);
  await page.getByRole('button', { name: 'This wall is sound' }).click();
  await page.getByRole('button', { name: 'Hand in: the wall is sound' }).click();
  await page.locator('#result-heading').waitFor();
}

describe.each(LOOKS)('today’s practice at $width px, $colours', (look) => {
  test('come back, press one button, read a wall, go on to the next, and stop after ten minutes', async () => {
    // A newcomer is offered a first wall, and no practice that knows them.
    const { page, problems, close } = await visit(browser, '/', look);
    const to = (path: string) => page.goto(new URL(path, page.url()).href);
    const offer = page.getByRole('link', { name: 'Today’s practice' });
    await page.getByRole('link', { name: 'Read a first wall' }).waitFor();
    expect(await offer.count()).toBe(0);

    await to('/practise/record');
    const file = { name: 'practice-record.json', mimeType: 'application/json', buffer: Buffer.from(record) };
    await page.getByLabel('A practice record').setInputFiles(file);
    await page.getByText('2 of 2 attempts in the file were new').waitFor();

    await to('/');
    await offer.waitFor();
    await lookAt(page, 'front-page-back', look);
    await offer.focus();
    await page.keyboard.press('Enter');
    await page.waitForURL(/\/walls\//);
    await page.getByText('Ties: you have been shown how, so now read one on your own.').waitFor();
    await page.getByText('Ontario').first().waitFor();
    const first = page.url();

    // Whoever goes away and presses the button again finds the same wall.
    await to('/practise');
    await offer.click();
    await page.waitForURL(first);
    await saySound(page);
    await lookAt(page, 'today-result', look);
    await page.getByRole('link', { name: GO_ON }).click();
    await page.waitForURL(/\/practise\/guided\//);
    await page.getByText('Back-buttering and contact: this is new to you').waitFor();
    await lookAt(page, 'today-guided', look);

    // Eleven minutes on, the next step is the end.
    await page.clock.setFixedTime(Date.now() + ELEVEN_MINUTES);
    await to('/practise/today?go=on');
    await page.getByRole('heading', { name: 'Ten minutes are over' }).waitFor();
    await page.getByText('You did one exercise.').waitFor();
    await lookAt(page, 'today-over', look);
    await page.getByRole('link', { name: 'Ten more minutes' }).click();
    await page.waitForURL(/\/practise\/guided\//);
    // A wall that is not part of it leads on as it always did.
    await to(`/walls/${wall}`);
    await saySound(page);
    await page.getByRole('link', { name: 'Next wall on this topic' }).waitFor();
    expect(problems).toEqual([]);
    await close();
  });
});
