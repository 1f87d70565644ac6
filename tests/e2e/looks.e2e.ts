import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { LOOKS, openBrowser, visit } from './browser';
import { firstWall, lookAt } from './practice/practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const wall = firstWall(
  { topic: 'support', kind: 'window-panel', difficulty: 2, rules: 'canada' },
  (findings) => findings.length > 0,
);

describe.each(LOOKS)('a wall at $width px, $colours', (look) => {
  test('is looked at in every way, with the keyboard', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${wall.code}`, look);
    const looks = page.getByRole('group', { name: 'Look' }).getByRole('radio');
    const names = await page.getByRole('group', { name: 'Look' }).locator('label').allTextContents();
    expect(names).toHaveLength(9);
    await looks.first().focus();
    await page.keyboard.press('Space');
    for (const name of names) {
      if (name !== names[0]) await page.keyboard.press('ArrowRight');
      expect(await page.getByRole('radio', { name, exact: true }).isChecked()).toBe(true);
      await lookAt(page, `look-${name.toLowerCase().replaceAll(' ', '-')}`, look);
      if (name !== 'From the side') continue;
      // After the whole height come the cuts, each where steel carries the wall.
      await page.getByRole('group', { name: 'At' }).getByRole('radio').last().check();
      await lookAt(page, 'look-cut', look);
      await page.getByRole('radio', { name, exact: true }).focus();
    }
    expect(problems).toEqual([]);
    await close();
  });

  test('is read as a list, in large buttons', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${wall.code}`, look);
    await page.getByRole('checkbox', { name: 'Large buttons, for gloves' }).check();
    await page.getByText('Lengths and list').click();
    await page.getByRole('radio', { name: 'a list' }).check();
    await page.getByRole('button', { name: 'Row above' }).click();
    const unit = page.getByRole('button', { name: /^Course 2, unit 1,/ });
    const { height = 0 } = (await unit.boundingBox()) ?? {};
    expect(height).toBeGreaterThanOrEqual(76);
    await lookAt(page, 'list-in-large-buttons', look);
    await unit.click();
    await page.getByRole('heading', { name: /^Course 2, unit 1/ }).waitFor();
    await page.reload();
    await page.getByRole('checkbox', { name: 'Large buttons, for gloves', checked: true }).waitFor();
    expect(problems).toEqual([]);
    await close();
  });
});
