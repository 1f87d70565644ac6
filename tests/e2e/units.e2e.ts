import type { Browser, Locator, Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { faultyWall } from '../../lib/drills/faulty-wall';
import { codeOf } from '../../lib/generate/wall-code';
import { openBrowser, sidewaysOverflow, visit } from './browser';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const MOST_TABS = 60;
const code = codeOf(
  faultyWall({ topic: 'ties', kind: 'plain-panel', difficulty: 2, rules: 'canada', seed: 1 }).brief,
);

/** Goes on with the tab key until the choice of units has the keyboard. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await wanted.waitFor();
  for (let tabs = 0; tabs < MOST_TABS; tabs += 1) {
    await page.keyboard.press('Tab');
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`not reached with ${MOST_TABS} tabs`);
}

const chosen = (page: Page) => page.getByRole('radio', { name: 'inches', exact: true });

/** Where figures follow the choice, and what they say then. */
const FOLLOWS = [
  [`/walls/${code}`, /\d in\b/],
  ['/practise/build', /\d in\b/],
  ['/instruments', /0\.004 in/],
  ['/drawings/level-and-straightedge', /in in 10 ft/],
  ['/drawings/lintel', /\d lbf of wall/],
  ['/drawings/mortar-box', /68 °F/],
] as const;

test.each(FOLLOWS)('%s: inches are chosen by keyboard on a phone and told at once', async (path, told) => {
  const { page, problems, close } = await visit(browser, path, { width: 390, colours: 'light' });
  if (path.startsWith('/walls/')) {
    // Folded, to keep the way to handing in short.
    await tabTo(page, page.locator('summary', { hasText: 'Lengths and list' }));
    await page.keyboard.press('Enter');
  }
  await tabTo(page, page.getByRole('radio', { name: 'mm', exact: true }));
  await page.keyboard.press('ArrowRight');
  expect(await chosen(page).isChecked()).toBe(true);
  await page.locator('main').getByText(told).first().waitFor({ state: 'attached' });
  expect(await sidewaysOverflow(page)).toBe(0);
  expect(problems).toEqual([]);
  await close();
});

test('inches chosen once hold on every page that has the choice, and after a reload', async () => {
  const { page, close } = await visit(browser, '/questions/openings', { width: 390, colours: 'dark' });
  await tabTo(page, page.getByRole('radio', { name: 'mm', exact: true }));
  await page.keyboard.press('ArrowRight');
  const { origin } = new URL(page.url());
  for (const path of [
    '/questions/openings',
    `/practise/pair/${code}`,
    `/practise/guided/${code}`,
    ...FOLLOWS.map(([each]) => each),
  ]) {
    await page.goto(`${origin}${path}`);
    await page.locator('input[type=radio][value=inches]:checked').waitFor({ state: 'attached' });
  }
  await close();
});
