import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { slidersOf } from '../../../lib/generate/adjustable/sliders';
import { layTrue } from '../../../lib/generate/adjustable/true-wall';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const wall = layTrue('window-panel', 'anchored', 'canada');
const TAPER = 'Taper of one bed joint';
const OVERHANG = 'Overhang past the ledge';
/** Its slider goes to twice the limit. */
const limit = (slidersOf(wall, 'canada').find(({ name }) => name === TAPER)?.fitted.most ?? 0) / 2;

async function type(page: Page, name: string, value: number): Promise<void> {
  const box = page.getByRole('spinbutton', { name, exact: true });
  await box.fill(String(value));
  await box.blur();
}

async function open(page: Page, family: string): Promise<void> {
  await page
    .locator('summary')
    .filter({ has: page.getByRole('heading', { name: family, exact: true }) })
    .click();
}

describe.each(LOOKS)('a wall built at $width px, $colours', (look) => {
  test('is sound at its limit and spoiled an eighth of a millimetre past it, by every rule set side by side', async () => {
    const { page, problems, close } = await visit(
      browser,
      '/practise/build?wall=window-panel&rules=canada',
      look,
    );
    await awake(page);
    await page.getByText('The wall is sound: no limit is crossed.').waitFor();
    await lookAt(page, 'build-1-sound', look);

    await type(page, TAPER, limit);
    await page.getByText('The wall is sound: no limit is crossed.').waitFor();
    await type(page, TAPER, limit + 0.125);
    await page.getByText('One limit is crossed.').waitFor();
    await page.getByText(/Bed joint tapers\. Bed joint under unit/).waitFor();
    await page.getByText(`All rule sets: ${TAPER}`).click();
    await page.getByText(`Crossed above ${limit} mm.`).first().waitFor();
    await lookAt(page, 'build-2-taper', look);

    await open(page, 'Support');
    await type(page, OVERHANG, 50);
    await page.getByRole('alert').getByText('the bottom course tips off its ledge').waitFor();
    await page.getByRole('button', { name: `Look at it: ${OVERHANG}` }).click();
    await lookAt(page, 'build-3-refused', look);
    await page.getByRole('button', { name: 'Make it all sound again' }).click();
    await page.getByText('The wall is sound: no limit is crossed.').waitFor();
    expect(await page.getByRole('alert').filter({ hasText: 'tips' }).count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });

  test('a unit stuck on loses its mortar in the look behind it, in inches', async () => {
    const { page, problems, close } = await visit(
      browser,
      '/practise/build?wall=stuck-on&rules=united-states',
      look,
    );
    await awake(page);
    await open(page, 'Backs');
    await type(page, 'Mortar on the back of one unit', 60);
    await page.getByText(new RegExp(`1\\. ${CATALOGUE['missing-back-mortar'].name}`)).waitFor();
    await page.getByRole('button', { name: 'Look at it: Mortar on the back of one unit' }).click();
    await page.getByText(/^Lifted: /).waitFor();
    await lookAt(page, 'build-4-stuck-on', look);
    await open(page, 'Marks on the faces');
    await page.getByLabel('What a few units can show').selectOption({ index: 1 });
    await lookAt(page, 'build-5-face-marks', look);
    expect(problems).toEqual([]);
    await close();
  });
});

test('a slider is moved by the keyboard alone, and the limit is crossed on the way', async () => {
  const { page, close } = await visit(browser, '/practise/build?wall=window-panel&rules=canada', {
    width: 390,
    colours: 'light',
  });
  await awake(page);
  await page.getByRole('slider', { name: `${TAPER}, slider` }).focus();
  await page.keyboard.press('End');
  await page.getByText('One limit is crossed.').waitFor();
  await page.keyboard.press('Home');
  await page.getByText('The wall is sound: no limit is crossed.').waitFor();
  await close();
});
