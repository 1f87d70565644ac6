import type { Browser, Locator } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { openBrowser, visit } from '../browser';
import { firstWall, lookAt, NO_DOUBLE_TAP_MS } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const stuck = firstWall(
  { topic: 'back-mortar', kind: 'plain-panel', difficulty: 2, rules: 'canada' },
  (findings) => findings.length > 0,
);

/** The longest of all walls: a window as high as half a phone leaves blank paper over it, unless it is filled. */
const corner = firstWall(
  { topic: 'joints', kind: 'door-corner', difficulty: 2, rules: 'canada' },
  (findings) => findings.length > 0,
);

test('eight units are lifted in twenty taps at most, the wall stays in sight, and the number left is kept', async () => {
  const look = { width: 390, colours: 'light' } as const;
  const { page, problems, close } = await visit(browser, `/walls/${stuck.code}`, look);
  let taps = 1;
  await page.getByRole('radio', { name: 'Behind a unit' }).check();
  const first = await page.getByText(/Tap a unit on the wall to lift it\. You may lift/).textContent();
  const most = Number(/lift (\d+) units/.exec(first ?? '')?.[1]);
  expect(most).toBeGreaterThan(10);
  await lookAt(page, '14-before-lifting', look);
  const svg = page.locator('[data-stage] svg[data-measured="true"]').first();
  await page.evaluate(() => window.scrollTo(0, 0));
  const box = await svg.boundingBox();
  if (box === null) throw new RangeError('the wall is not on the screen');
  const lifted = page.locator('[data-lifted]');
  // Come nearer, lift the six that are in sight, look further up, lift two more: a drag would do for the way.
  const lift = async (across: number, down: number) => {
    await page.touchscreen.tap(box.x + box.width * across, box.y + box.height * down);
    taps++;
    await page.waitForTimeout(NO_DOUBLE_TAP_MS);
  };
  await lift(0.5, 0.5);
  while ((await lifted.count()) < 8 && taps < 30) {
    for (const down of [0.2, 0.5, 0.8]) {
      for (const across of [0.25, 0.8]) if ((await lifted.count()) < 8) await lift(across, down);
    }
    await page.getByRole('button', { name: 'Look further up' }).first().click();
    taps++;
  }
  expect(await lifted.count()).toBe(8);
  expect(taps).toBeLessThanOrEqual(20);
  await page
    .getByText(`You may lift ${most - 8} more of ${most}.`)
    .first()
    .waitFor();
  expect(await svg.isVisible()).toBe(true);
  await lookAt(page, '14-lifted', look);
  await page.reload();
  await page.getByRole('radio', { name: 'Behind a unit' }).check();
  await page.getByText('Lifted so far (8)').click();
  expect(await page.locator('[data-lifted]').count()).toBe(8);
  expect(problems).toEqual([]);
  await close();
});

test('on a phone the wall comes first: half the screen high above the fold, its looks and the way on under it', async () => {
  const look = { width: 390, colours: 'light' } as const;
  const { page, problems, close } = await visit(browser, `/walls/${corner.code}`, look);
  await page.locator('[data-measured="true"]').first().waitFor();
  const within = async (what: Locator) => {
    const box = await what.boundingBox();
    if (box === null) throw new RangeError('nothing there');
    return { ...box, foot: box.y + box.height };
  };
  const wall = await within(page.locator('[data-stage] svg[data-measured]').first());
  expect(wall.width).toBe(390);
  expect(wall.height).toBeGreaterThanOrEqual(422);
  expect(wall.foot).toBeLessThan(844);
  const onward = await within(page.getByRole('button', { name: 'Check once more, then hand in' }));
  expect(onward.foot).toBeLessThanOrEqual(844);
  const looks = await within(page.getByRole('radio', { name: 'Side light' }));
  expect(looks.y).toBeGreaterThan(wall.foot);
  expect(looks.foot).toBeLessThanOrEqual(onward.y);
  // Hints in turn: come nearer, tap it; skipped, they are gone for good.
  await page.getByText('Come nearer').waitFor();
  await page.touchscreen.tap(200, wall.y + 300);
  await page.getByText('Now tap what looks wrong').waitFor();
  await page.getByRole('button', { name: 'Skip' }).click();
  await page.reload();
  await page.locator('[data-ready="true"] [data-measured="true"]').first().waitFor();
  expect(await page.getByText('Come nearer').count()).toBe(0);
  expect(problems).toEqual([]);
  await close();
});
