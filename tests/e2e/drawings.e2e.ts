import type { Browser } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { DRAWINGS } from '../../components/trade/drawings';
import { expectInOrder, type Look, newContext, openBrowser, pagesInTurn, visit } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const PHONE: Look = { width: 390, colours: 'light' };

test.each(pagesInTurn(['/drawings', ...DRAWINGS.map(({ name }) => `/drawings/${name}`)]))(
  '$path is in order, on a phone and on a desk, by day and by night',
  (each) =>
    expectInOrder(browser, each, async (page) => {
      for (const details of await page.locator('main details').all())
        await details.locator('summary').click();
    }),
);

test('the list leads to every drawing', async () => {
  const { page, close } = await visit(browser, '/drawings', PHONE);
  for (const { title } of DRAWINGS) {
    await page.getByRole('link', { name: title, exact: true }).click();
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
    await page.getByRole('link', { name: 'All drawings' }).click();
    await page.getByRole('heading', { level: 1, name: 'Interactive drawings' }).waitFor();
  }
  await close();
});

test('the arrow keys push the unit over its ledge until it tips', async () => {
  const { page, close } = await visit(browser, '/drawings/on-the-ledge', PHONE);
  await page.getByRole('slider', { name: 'Past the edge of the ledge, slider' }).focus();
  for (let step = 20; step < 45; step++) await page.keyboard.press('ArrowRight');
  expect(await page.getByRole('status').textContent()).toContain('It tips.');
  expect(await page.getByRole('img', { name: /45 mm past the edge of its ledge, tipping/ }).count()).toBe(1);
  await close();
});

// A browser's own number box drops what it does not know: the comma, and 15 kg is read.
test.each([
  ['1,5', '29.42 J'],
  ['3/4', '14.71 J'],
])('%s, typed key by key, is read as typed', async (typed, energy) => {
  const { page, close } = await visit(browser, '/drawings/falling-brick', PHONE);
  const box = page.getByRole('spinbutton', { name: 'Mass of the unit' });
  await box.fill('');
  await box.pressSequentially(typed);
  expect(await page.getByRole('status').textContent()).toContain(energy);
  await close();
});

test('without script the drawing and its answer are there', async () => {
  const context = await newContext(browser, {
    javaScriptEnabled: false,
    viewport: { width: 390, height: 844 },
  });
  const page = await context.newPage();
  await page.goto(`${process.env.SITE_ADDRESS ?? ''}/drawings/string-line`);
  expect(await page.getByRole('img', { name: 'A line of 20000 mm that sags 6.86 mm' }).count()).toBe(1);
  expect(await page.getByRole('status').textContent()).toContain('The line sags 6.86 mm');
  expect(await page.getByText('Without it the drawing stands as you see it.').isVisible()).toBe(true);
  expect(await page.getByRole('slider').count()).toBe(0);
  await context.close();
});

// A CSS millimetre is 96/25.4 pixels: a strip of 240 mm is 907 px long on paper.
test('the gauge rod is printed at full size, on strips of 240 mm', async () => {
  const { page, close } = await visit(browser, '/drawings/gauge-rod', { width: 1280, colours: 'light' });
  await page.getByLabel('Print the rod at full size, on strips').check();
  const strips = page.getByRole('region', { name: 'The rod at full size' });
  expect(await strips.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await strips.isVisible()).toBe(true);
  const drawn = strips.locator('svg');
  // 3300 mm are 14 strips.
  expect(await drawn.count()).toBe(14);
  expect(Math.round((await drawn.first().boundingBox())?.height ?? 0)).toBe(907);
  await close();
});
