import { readdirSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  accessibilityProblems,
  expectInOrder,
  LOOKS,
  newContext,
  openBrowser,
  pagesInTurn,
  visit,
} from './browser';
import { lookAt } from './practice/practice-steps';

const SLUGS = readdirSync('content/lessons').map((name) => name.replace(/\.mdx$/, ''));
const PAGES = ['/lessons', '/glossary', '/sources', ...SLUGS.map((slug) => `/lessons/${slug}`)];

/** Screens of a phone from the top of a lesson to its end. */
const MOST_SCREENS = 5;

const { SITE_ADDRESS = '' } = process.env;

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

test.each(pagesInTurn(PAGES))('$path is in order, on a phone and on a desk, by day and by night', (each) =>
  expectInOrder(browser, each),
);

describe.each(SLUGS)('%s', (slug) => {
  test('is whole without script: drawings, all rule sets and answers', async () => {
    const context = await newContext(browser, {
      javaScriptEnabled: false,
      viewport: { width: 390, height: 844 },
    });
    const page = await context.newPage();
    await page.goto(`${SITE_ADDRESS}/lessons/${slug}`);
    expect(await page.locator('main h2').allTextContents()).toEqual([
      'Look first',
      'What good looks like',
      'How it is done right',
      'How it is measured',
      'What is required',
      'What goes wrong',
      'What puts it right',
      'Your turn',
      'Words of this lesson',
      'Sources',
    ]);
    const shown = await page
      .locator('article [data-for]')
      .evaluateAll((rows) => rows.map((row) => (row instanceof HTMLElement ? row.offsetHeight : 0)));
    expect(Math.min(...shown)).toBeGreaterThan(0);
    expect(await page.getByLabel('Show the limits of').isVisible()).toBe(false);
    await page.getByText('Which one has the fault?').click();
    expect(await page.getByText(/^It is the (first|second) wall, checked against/).isVisible()).toBe(true);
    const drawn = await page.locator('main img').evaluateAll(async (images) => {
      const loaded = images.filter((image) => image instanceof HTMLImageElement);
      return loaded.map(({ naturalWidth }) => naturalWidth);
    });
    expect(Math.min(...drawn)).toBeGreaterThan(0);
    // Without script the limits of all rule sets stand side by side: more sheets than with it, and still a handful.
    const pages = (await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
    expect(pages.length).toBeGreaterThanOrEqual(4);
    expect(pages.length).toBeLessThanOrEqual(14);
    await context.close();
  });
});

/** Opens a step that a phone shows folded. */
async function unfold(page: Page, step: string): Promise<void> {
  await page.locator('summary', { hasText: step }).click();
}

test.each(SLUGS)(
  '%s is a few screens long on a phone, the rest of it folded, and whole on a desk',
  async (slug) => {
    const { page, close } = await visit(browser, `/lessons/${slug}`, { width: 390, colours: 'light' });
    const high = await page.evaluate(() => document.documentElement.scrollHeight / window.innerHeight);
    expect(high).toBeLessThanOrEqual(MOST_SCREENS);
    const required = page.locator('details', { has: page.getByText('What is required', { exact: true }) });
    expect(await required.getByRole('paragraph').first().isVisible()).toBe(false);
    await unfold(page, 'What is required');
    expect(await required.getByRole('paragraph').first().isVisible()).toBe(true);
    await page.setViewportSize({ width: 1280, height: 900 });
    for (const step of await page.locator('article details:has(h2)').all()) {
      await step.locator(':scope > summary + *').waitFor();
    }
    const glance = page.getByRole('complementary', { name: 'This lesson at a glance' });
    await glance.getByRole('link', { name: 'What goes wrong' }).click();
    expect(await page.locator('#what-goes-wrong').isVisible()).toBe(true);
    await close();
  },
);

test.each(SLUGS)('%s shows a wall on the first screen of a phone', async (slug) => {
  const { page, close } = await visit(browser, `/lessons/${slug}`, { width: 390, colours: 'light' });
  const box = await page.locator('main img').first().boundingBox();
  // At least the upper half of the drawing lies above the fold of 844 px.
  expect((box?.y ?? 844) + (box?.height ?? 844) / 2).toBeLessThanOrEqual(844);
  await close();
});

test('the rule set a reader chooses is the one shown, on every lesson, and stays', async () => {
  const { page, problems, close } = await visit(browser, '/lessons/openings', {
    width: 390,
    colours: 'light',
  });
  await unfold(page, 'What is required');
  const bearing = page.locator('article p', { hasText: 'Steel lintel, bearing at each end' }).locator('..');
  // NBC 2020: 90 mm; Ontario 2024: 150 mm (the trade brief has both).
  expect(await bearing.getByText(/^at least 90/).isVisible()).toBe(true);
  expect(
    await bearing
      .getByText(/^at least 150/)
      .first()
      .isVisible(),
  ).toBe(false);
  await page.getByLabel('Show the limits of').selectOption('Ontario (2024)');
  expect(await bearing.getByText(/^at least 90/).isVisible()).toBe(false);
  expect(
    await bearing
      .getByText(/^at least 150/)
      .first()
      .isVisible(),
  ).toBe(true);

  await page.reload();
  await unfold(page, 'What is required');
  // Set by the page's script: before it has run, the choice is the one that the server sent.
  await page.locator('html[data-rules="ontario"]').waitFor();
  expect(await page.getByLabel('Show the limits of').inputValue()).toBe('ontario');
  expect(await page.getByRole('link', { name: 'Read a wall with an opening' }).getAttribute('href')).toBe(
    '/walls?topic=support&kind=window-panel&difficulty=1&rules=ontario',
  );
  expect(problems).toEqual([]);
  await close();
});

test('a word leads to its entry, and the header to the lessons', async () => {
  const { page, close } = await visit(browser, '/lessons/ties', { width: 1280, colours: 'light' });
  await page.locator('main').getByRole('link', { name: 'ties', exact: true }).first().click();
  await page.waitForURL('**/glossary/tie');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Brick tie, anchor');
  const picture = page.getByRole('main').getByRole('img');
  expect(await picture.getAttribute('alt')).toMatch(/^A house wall before its brick: on each stud a strap/);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Lessons' }).click();
  await page.waitForURL('**/lessons');
  expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Lessons');
  await close();
});

test('a lesson asks its questions in its own page, by the rules in use', async () => {
  const { page, problems, close } = await visit(browser, '/lessons/ties', { width: 390, colours: 'light' });
  await page.getByRole('button', { name: 'Answer a few questions' }).click();
  await page.getByRole('heading', { name: 'Question 1 of 3' }).waitFor();
  expect(problems).toEqual([]);
  expect(await accessibilityProblems(page)).toEqual([]);
  await close();
});

test('the keyboard stays where a drawing or the questions open', async () => {
  const { page, close } = await visit(browser, '/lessons/ties', { width: 390, colours: 'light' });
  await unfold(page, 'What is required');
  await page.getByRole('button', { name: 'Open the drawing' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'Tie map' }).waitFor();
  const button = page.getByRole('button', { name: 'Close the drawing' });
  expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  expect(await page.getByRole('region', { name: 'Tie map' }).count()).toBe(0);

  await page.getByRole('button', { name: 'Answer a few questions' }).focus();
  await page.keyboard.press('Enter');
  const heading = page.getByRole('heading', { name: 'Question 1 of 3' });
  await heading.waitFor();
  expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
  await close();
});

test.each(LOOKS)('words are looked up as they are typed, at $width px, $colours', async (look) => {
  const { page, problems, close } = await visit(browser, '/search?q=weep', look);
  const found = page.getByRole('main').getByRole('listitem');
  await page.getByRole('main').getByRole('link', { name: 'Weep', exact: true }).waitFor();
  await lookAt(page, 'search-found', look);
  const words = page.getByRole('searchbox', { name: 'What are you looking for?' });
  await words.fill('zzzz');
  await page.getByText('Nothing here answers to “zzzz”.').waitFor();
  expect(await found.count()).toBe(0);
  await lookAt(page, 'search-nothing', look);
  await words.fill('perpend');
  await found.filter({ hasText: 'Word of the trade' }).getByRole('link', { name: 'Head joint' }).click();
  await page.waitForURL('**/glossary/head-joint');
  expect(problems).toEqual([]);
  await close();
});

test('no other page fetches the index', async () => {
  const { page, close } = await visit(browser, '/lessons', { width: 390, colours: 'light' });
  const fetched = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
  expect(fetched.filter((name) => name.includes('/search'))).toEqual([]);
  await close();
});
