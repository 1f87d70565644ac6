import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { expectInOrder, openBrowser, pagesInTurn, visit } from '../browser';
import { lookAt } from '../practice/practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const PHONE = { width: 390, colours: 'light' } as const;
const DESK = { width: 1280, colours: 'dark' } as const;
const PATH = '/your-wall/photograph';
const KIB = 1024;
/** What may be fetched once a photograph is there, as it is sent. */
const MATHEMATICS = 40 * KIB;

/** The real photograph and its published mapping: tests/lib/photo/brick-photograph.ts. The wall lies on its side in it. */
const BRICK = 'tests/lib/photo/brick.png';
const CORNERS = [
  ['Top left', 57, 4],
  ['Top right', 434, 6],
  ['Bottom right', 505, 422],
  ['Bottom left', 3, 420],
] as const;
const WIDTH = 1370;
const HEIGHT = 1130;

const handle = (page: Page, name: string) =>
  page.getByRole('button', { name: new RegExp(`^${name} corner`) });

async function placeOf(page: Page, name: string): Promise<readonly [number, number]> {
  const label = (await handle(page, name).getAttribute('aria-label')) ?? '';
  const [, x = '', y = ''] = /: (\d+) across, (\d+) down$/.exec(label) ?? [];
  return [Number(x), Number(y)];
}

/** 107.97 ± 0.8 texture pixels to a course; corners set to a pixel or two leave about 1. */
async function expectGauge(page: Page): Promise<void> {
  const gauge = page.getByRole('listitem').filter({ hasText: 'One course with its bed joint, on average' });
  await gauge.waitFor();
  const told = Number(/([\d.]+) mm, give or take/.exec((await gauge.textContent()) ?? '')?.[1]);
  expect(Math.abs(told - 107.97)).toBeLessThan(2);
}

test.each(pagesInTurn([PATH]))('$path is in order, on a phone and on a desk, by day and by night', (each) =>
  expectInOrder(browser, each, (page) => page.getByRole('heading', { level: 1 }).waitFor()),
);

describe('the real photograph', () => {
  test('is measured by touch on a phone, its lines gone through, and no request leaves the page', async () => {
    const { page, problems, close } = await visit(browser, PATH, PHONE);
    await page.getByLabel('Choose or take a photograph').setInputFiles(BRICK);
    await page.getByRole('heading', { name: '2. Four corners of a rectangle on the wall' }).waitFor();
    for (const [name, x, y] of CORNERS) {
      await page.getByRole('radio', { name, exact: true }).tap();
      const shown = await page.locator('img[src^="blob:"]').boundingBox();
      if (shown === null) throw new Error('no picture');
      const by = shown.width / 512;
      await page.locator('img[src^="blob:"]').tap({ position: { x: x * by, y: y * by }, force: true });
      const [across, down] = await placeOf(page, name);
      expect(Math.hypot(across - x, down - y)).toBeLessThan(3);
    }
    await lookAt(page, 'photo-corners', PHONE);
    await page.getByLabel('Width between the corners').fill(`${WIDTH}`);
    await page.getByLabel('Height between the corners').fill(`${HEIGHT}`);
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.method()));
    await page.getByRole('button', { name: 'Find the joints' }).tap();
    await expectGauge(page);
    await page.getByText('This photograph cannot tell. Limit: 5 mm to 15 mm').first().waitFor();
    await lookAt(page, 'photo-measured', PHONE);
    await page.getByText('Bed joint 1 from the top').waitFor();
    await page.getByRole('button', { name: 'Next line' }).tap();
    await page.getByRole('button', { name: 'Down 1 mm' }).tap();
    await expectGauge(page);
    await page.getByRole('button', { name: 'Line before' }).tap();
    await page.getByRole('button', { name: 'No joint: take it out' }).tap();
    await expectGauge(page);
    expect(asked.every((method) => method === 'GET')).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });

  test('is measured by keyboard alone, and the mathematics weighs little', async () => {
    const { page, problems, close } = await visit(browser, PATH, PHONE);
    const scripts = new Set<string>();
    page.on('request', (request) => {
      if (new URL(request.url()).pathname.endsWith('.js')) scripts.add(request.url());
    });
    await page.getByLabel('Choose or take a photograph').setInputFiles(BRICK);
    for (const [name, x, y] of CORNERS) {
      await handle(page, name).focus();
      const [across, down] = await placeOf(page, name);
      for (const [way, back, by] of [
        ['ArrowRight', 'ArrowLeft', x - across],
        ['ArrowDown', 'ArrowUp', y - down],
      ] as const) {
        const key = by > 0 ? way : back;
        for (let step = 0; step < Math.floor(Math.abs(by) / 20); step++)
          await page.keyboard.press(`Shift+${key}`);
        for (let step = 0; step < Math.abs(by) % 20; step++) await page.keyboard.press(key);
      }
      expect(await placeOf(page, name)).toEqual([x, y]);
    }
    await page.getByLabel('Width between the corners').focus();
    await page.keyboard.type(`${WIDTH}`);
    await page.keyboard.press('Tab');
    await page.keyboard.type(`${HEIGHT}`);
    await page.getByRole('button', { name: 'Find the joints' }).focus();
    await page.keyboard.press('Enter');
    await expectGauge(page);
    // What the worker fetches is not among what its page fetched.
    const ofPage = await page.evaluate(() =>
      performance.getEntriesByType('resource').map(({ name }) => name),
    );
    const ofWorker = [...scripts].filter((url) => !ofPage.includes(url));
    const sizes = await Promise.all(
      ofWorker.map(async (url) => {
        const { headers } = await fetch(url, { headers: { 'accept-encoding': 'gzip' } });
        return Number(headers.get('content-length'));
      }),
    );
    expect(sizes.length).toBeGreaterThan(1);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(MATHEMATICS);
    expect(problems).toEqual([]);
    await close();
  });

  test('says in words what is missing, and what is no masonry', async () => {
    const { page, close } = await visit(browser, PATH, DESK);
    await page.getByLabel('Choose or take a photograph').setInputFiles({
      name: 'plain.svg',
      mimeType: 'image/png',
      buffer: Buffer.from('no picture'),
    });
    await page.getByText('This file cannot be read as a picture. Choose a JPEG or a PNG.').waitFor();
    await page.getByLabel('Choose or take a photograph').setInputFiles(BRICK);
    await page.getByRole('button', { name: 'Find the joints' }).click();
    await page.getByText('Fill in the size first, in step 3.').waitFor();
    await page.getByLabel('Width between the corners').fill('30');
    await page.getByLabel('Height between the corners').fill('20');
    await page.getByRole('button', { name: 'Find the joints' }).click();
    await page.getByText(/^The picture: /).waitFor();
    await lookAt(page, 'photo-refused', DESK);
    await close();
  });
});
