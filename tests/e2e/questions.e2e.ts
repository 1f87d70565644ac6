import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { QUESTION_TOPICS } from '../../lib/questions/topics';
import {
  accessibilityProblems,
  expectInOrder,
  openBrowser,
  pagesInTurn,
  sidewaysOverflow,
  visit,
} from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

test.each(pagesInTurn(['/questions', '/questions/openings?rules=united-kingdom&seed=5']))(
  '$path is in order, on a phone and on a desk, by day and by night',
  (each) => expectInOrder(browser, each),
);

test.each(QUESTION_TOPICS)(
  'a set on %s is gone through to its end, each state fit for all',
  async (topic) => {
    const width = QUESTION_TOPICS.indexOf(topic) % 2 === 0 ? 390 : 1280;
    const { page, problems, close } = await visit(browser, `/questions/${topic}?rules=canada&seed=42`, {
      width,
      colours: 'light',
    });
    for (let number = 1; number <= 6; number++) {
      await page.getByRole('heading', { name: `Question ${number} of 6` }).waitFor();
      const field = page.getByRole('textbox');
      const choice = page.locator('form').locator('input[type=radio], input[type=checkbox]').first();
      if ((await field.count()) > 0) await field.fill('1');
      else if ((await choice.count()) > 0) await choice.check();
      await page.getByRole('button', { name: 'Check', exact: true }).click();
      await page.getByText(/^[✓✕] (Right|Not right)$/).waitFor();
      expect(await sidewaysOverflow(page)).toBe(0);
      // What is asked and what is told are on the page together now: one look for both.
      expect(await accessibilityProblems(page)).toEqual([]);
      await page.getByRole('button', { name: /Next question|See how it went/ }).click();
    }
    await page.getByRole('heading', { name: /of 6 right/ }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(problems).toEqual([]);
    await close();
  },
);

test('an address without a seed leads on to one that can be shared, and the same address asks the same', async () => {
  const { page, close } = await visit(browser, '/questions/ties', { width: 1280, colours: 'light' });
  expect(new URL(page.url()).search).toMatch(/^\?rules=canada&seed=\d+$/);
  const asked = await page.locator('form').textContent();
  await page.reload();
  expect(await page.locator('form').textContent()).toBe(asked);
  await close();
});

test('on paper there are all six questions and their answers', async () => {
  const { page, close } = await visit(browser, '/questions/line?rules=united-states&seed=7', {
    width: 1280,
    colours: 'light',
  });
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('form').isVisible()).toBe(false);
  await page.getByRole('heading', { name: 'Answers' }).waitFor();
  expect(await page.locator('ol > li > strong').count()).toBe(6);
  await close();
});
