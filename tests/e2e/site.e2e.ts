import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { accessibilityProblems, expectInOrder, openBrowser, pagesInTurn, visit } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

test.each(pagesInTurn(['/', '/safety', '/instruments']))(
  '$path is in order, on a phone and on a desk, by day and by night',
  (each) => expectInOrder(browser, each),
);

test('the first stop of the keyboard leads past the header', async () => {
  const { page, close } = await visit(browser, '/', { width: 1280, colours: 'light' });
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('main');
  await close();
});

test('an address that does not exist says so in plain words', async () => {
  const { page, close } = await visit(browser, '/no-such-wall-here', { width: 390, colours: 'light' });
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('There is no page here');
  await close();
});

test('colours for strong sun can be chosen and stay chosen', async () => {
  const { page, problems, close } = await visit(browser, '/safety', { width: 390, colours: 'dark' });
  await page.getByLabel('Colours').selectOption('Daylight: for strong sun');
  await page.reload();
  const paper = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await paper()).toBe('rgb(255, 255, 255)');
  expect(await page.getByLabel('Colours').inputValue()).toBe('daylight');
  expect(await accessibilityProblems(page)).toEqual([]);

  await page.getByLabel('Colours').selectOption('Like my device');
  expect(await paper()).toBe('rgb(25, 29, 32)');
  expect(problems).toEqual([]);
  await close();
});
