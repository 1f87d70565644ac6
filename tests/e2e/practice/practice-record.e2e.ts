import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { parseRecord } from '../../../lib/learning/record';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, firstWall, lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const brief = { topic: 'joints', kind: 'plain-panel', difficulty: 1, rules: 'canada' } as const;
const faulty = firstWall(brief, (findings) => findings.length === 1);
const [finding] = faulty.findings;
const RECORD = '/practise/record';

/** Hands the wall in as sound, which it is not. */
async function missIt(page: Page): Promise<void> {
  await awake(page);
  await page.getByRole('button', { name: 'This wall is sound' }).click();
  await page.getByRole('button', { name: 'Hand in: the wall is sound' }).click();
  await page.locator('#result-heading').waitFor();
}

/** The record as a file, read back. */
async function takeAway(page: Page) {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download my record' }).click();
  const path = await (await coming).path();
  return { path, read: parseRecord(readFileSync(path, 'utf8')) };
}

describe.each(LOOKS)('the practice record at $width px, $colours', (look) => {
  test('has a wall once it is handed in, goes to another device and comes back, and is deleted', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${faulty.code}`, look);
    await missIt(page);
    // A reload of the result adds nothing.
    await page.reload();
    await page.locator('#result-heading').waitFor();
    await page.goto(new URL(RECORD, page.url()).href);
    await page.getByText('1 full wall', { exact: true }).waitFor();
    await lookAt(page, 'record', look);

    const { path, read } = await takeAway(page);
    expect(read).toMatchObject({
      kind: 'read',
      attempts: [
        {
          ...{
            kind: 'full wall',
            wall: faulty.code,
            topic: 'joints',
            difficulty: 1,
            marks: [],
            falseCalls: [],
          },
          faults: [{ fault: finding?.check, outcome: 'missed', named: null }],
        },
      ],
    });

    const other = await visit(browser, RECORD, look);
    await other.page.getByText('Nothing yet.').waitFor();
    for (const told of ['1 of 1 attempts in the file were new', '0 of 1 attempts in the file were new']) {
      await other.page.getByLabel('A practice record').setInputFiles(path);
      await other.page.getByText(told).waitFor();
    }
    await other.page.getByText('1 full wall', { exact: true }).waitFor();
    await other.close();

    await page.getByRole('button', { name: 'Delete my record' }).click();
    await page.getByRole('button', { name: 'Yes, delete it for good' }).click();
    await page.getByText('Your practice record is deleted.').waitFor();
    await page.reload();
    await page.getByText('Nothing yet.').waitFor();
    expect(problems).toEqual([]);
    await close();
  });
});

test('a file that is no record is refused, and says why', async () => {
  const { page, close } = await visit(browser, RECORD, { width: 390, colours: 'light' });
  await page.getByText('Nothing yet.').waitFor();
  const buffer = Buffer.from('{"recordVersion":1,"attempts":[{}]}');
  await page
    .getByLabel('A practice record')
    .setInputFiles({ name: 'other.json', mimeType: 'application/json', buffer });
  await page.getByText('This file was not taken in: attempts.0: is not an attempt.').waitFor();
  await close();
});
