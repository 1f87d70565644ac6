import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { seedAfter } from '../../lib/drills/faulty-brief';
import { faultyWall } from '../../lib/drills/faulty-wall';
import { halfOf } from '../../lib/drills/guided/guided-steps';
import { measuredPair } from '../../lib/drills/pair/measured-pair';
import { codeOf } from '../../lib/generate/wall-code';
import { openBrowser, visit } from './browser';
import { awake, lookAt } from './practice/practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const PHONE = { width: 390, colours: 'light' } as const;
const DESK = { width: 1280, colours: 'light' } as const;
const KIB = 1024;
/** JavaScript of a page before the reader's first interaction, gzipped: the budgets of the issue. */
const LESSON = 140 * KIB;
const WALL = 180 * KIB;
/** All that a page to read weighs, but for its fonts. */
const TO_READ = 60 * KIB;

const asked = { kind: 'plain-panel', difficulty: 2, rules: 'canada', seed: 1 } as const;
const tied = codeOf(measuredPair({ ...asked, topic: 'ties' }).brief);
const stuckOn = codeOf(measuredPair({ ...asked, topic: 'back-mortar' }).brief);

/** A guided wall whose second step leaves this half. */
function guidedWith(half: 'name' | 'place'): string {
  let first = faultyWall({ ...asked, topic: 'ties' });
  while (halfOf(first.brief.seed) !== half) first = faultyWall(seedAfter(first.brief));
  return `/practise/guided/${codeOf(first.brief)}?step=2`;
}

async function scriptSizes(page: Page): Promise<readonly number[]> {
  return page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .filter((entry) => entry instanceof PerformanceResourceTiming && entry.name.endsWith('.js'))
      .map((entry) => (entry instanceof PerformanceResourceTiming ? entry.encodedBodySize : 0)),
  );
}

test.each(['/safety', '/sources', '/glossary/tie'])(
  '%s is read without a framework: no script is fetched, and little else beside the fonts',
  async (path) => {
    const { page, problems, close } = await visit(browser, path, PHONE);
    expect(await scriptSizes(page)).toEqual([]);
    const bytes = await page.evaluate(() =>
      [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')].reduce(
        (sum, entry) =>
          entry instanceof PerformanceResourceTiming && !entry.name.endsWith('.woff2')
            ? sum + entry.encodedBodySize
            : sum,
        0,
      ),
    );
    expect(bytes).toBeGreaterThan(0);
    expect(bytes).toBeLessThanOrEqual(TO_READ);
    await page.getByRole('combobox', { name: 'Colours' }).selectOption('Dark');
    await page.reload();
    expect(await page.evaluate(() => document.documentElement.dataset.theme)).toBe('dark');
    expect(await page.getByRole('combobox', { name: 'Colours' }).inputValue()).toBe('dark');
    expect(problems).toEqual([]);
    await close();
  },
);

test.each([
  ['/lessons/ties', LESSON],
  [`/walls/${tied}`, WALL],
  [`/walls/${stuckOn}`, WALL],
  [`/practise/pair/${tied}`, WALL],
  [`/practise/pair/${stuckOn}`, WALL],
  [`/practise/guided/${tied}`, WALL],
  [guidedWith('name'), WALL],
  [guidedWith('place'), WALL],
  ['/practise/build', WALL],
  ['/practise/quick?rules=canada&round=7', WALL],
  ['/practise/build?wall=stuck-on&rules=united-states', WALL],
])('%s loads no more script at first than %i bytes', async (path, budget) => {
  const { page, close } = await visit(browser, path, PHONE);
  const sizes = await scriptSizes(page);
  // A script that was not sent, such as one that is missing, would count nothing.
  expect(Math.min(...sizes)).toBeGreaterThan(0);
  expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(budget);
  await close();
});

describe.each([`/walls/${tied}`, `/practise/pair/${tied}`, `/practise/guided/${tied}`, '/practise/build'])(
  '%s',
  (path) => {
    test('says that a look did not arrive without a network, shows the front, and fetches it again', async () => {
      const { page, close } = await visit(browser, path, PHONE);
      await awake(page);
      const drawn = () => page.locator('svg[role="presentation"]').first().getAttribute('viewBox');
      const front = await drawn();
      await page.context().setOffline(true);
      await page.getByRole('radio', { name: 'Before cover' }).check();
      const again = page.getByRole('button', { name: 'Fetch it again' });
      await page.getByText('Part of this page did not arrive. Your work is kept.').first().waitFor();
      expect(await drawn()).toBe(front);
      for (const look of [DESK, PHONE]) {
        await page.setViewportSize({ width: look.width, height: 844 });
        await lookAt(page, `offline${path.replaceAll('/', '-').replace(`-${tied}`, '')}`, look);
      }
      await page.context().setOffline(false);
      // A page may miss more than its looks: each says so where it is missed.
      while ((await again.count()) > 0) {
        await again.first().click();
        await page.getByText('One moment …').first().waitFor({ state: 'detached' });
      }
      await expect.poll(drawn).not.toBe(front);
      await close();
    });
  },
);
