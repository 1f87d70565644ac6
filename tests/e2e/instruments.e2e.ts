import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { layWall } from '../../lib/generate/generate';
import { codeOf } from '../../lib/generate/wall-code';
import type { Unit } from '../../lib/wall/model';
import { LOOKS, openBrowser, visit } from './browser';
import { lookAt, pick, touch } from './practice/practice-steps';

const BRIEF = { topic: 'ties', kind: 'plain-panel', difficulty: 1, rules: 'canada', seed: 3 } as const;
const CODE = codeOf(BRIEF);

/** The unit two courses above another, over its middle: in sight of whoever stands close to the first. */
function unitOver(id: string): Unit {
  const { units } = layWall(BRIEF);
  const below = units.find((unit) => unit.id === id);
  const over = units.find(
    ({ course, x, length }) =>
      below !== undefined &&
      course === below.course + 2 &&
      x <= below.x + below.length / 2 &&
      x + length > below.x + below.length / 2,
  );
  if (over === undefined) throw new RangeError(`no unit over ${id}`);
  return over;
}

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

async function openBench(page: Page): Promise<void> {
  await page.locator('summary', { hasText: 'Measure here' }).click();
  await page.getByRole('region', { name: 'Instruments' }).waitFor();
}

describe.each(LOOKS)('instruments at $width px, $colours', (look) => {
  test('read a unit, then from one unit to another, and the notebook keeps both over a reload', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${CODE}`, look);
    await (look.width < 600 ? touch : pick)(page, 'A2.2');
    await openBench(page);
    const reading = page.getByRole('status', { name: 'Reading' });
    expect(await reading.textContent()).toMatch(/^Length\d+(\.5)? mm± 1 mm$/);
    await lookAt(page, 'instruments-1-tape', look);
    await page.getByRole('button', { name: 'Note it' }).click();

    await page.getByRole('combobox', { name: 'Instrument' }).selectOption('Straightedge and feelers');
    await page.getByRole('button', { name: 'Measure from here' }).click();
    const { id, course, position } = unitOver('A2.2');
    const second = page.locator(`[data-part="${id}"]`);
    await (look.width < 600 ? second.tap() : second.click());
    await page.getByRole('heading', { name: `Course ${course}, unit ${position}` }).waitFor();
    expect(await reading.textContent()).toMatch(/^Step of the face, from Course 2, unit 2/);
    await lookAt(page, 'instruments-2-two-points', look);
    await page.getByRole('button', { name: 'Note it' }).click();

    await page.reload();
    const notebook = page.getByRole('region', { name: 'Notebook: 2' });
    await notebook.waitFor();
    await lookAt(page, 'instruments-3-notebook', look);
    await notebook.getByRole('button', { name: 'Forget it' }).click();
    await page.getByRole('region', { name: 'Notebook: 1' }).waitFor();
    expect(problems).toEqual([]);
    await close();
  });
});

test('by keyboard alone: a part is picked, an instrument chosen, another reading taken and noted', async () => {
  const { page, problems, close } = await visit(browser, `/walls/${CODE}`, { width: 1280, colours: 'light' });
  await page.locator('[data-ready="true"]').waitFor();
  const tabTo = async (role: string, name: string) => {
    const wanted = page.getByRole(role as 'button', { name, exact: true });
    for (let stop = 0; stop < 12; stop++) {
      await page.keyboard.press('Tab');
      if (await wanted.evaluateAll((found) => found.some((each) => each === document.activeElement))) return;
    }
    throw new RangeError(`${role} ${name} is not within 12 stops of the keyboard`);
  };
  for (let stop = 0; stop < 20; stop++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.getAttribute('role') === 'gridcell')) break;
  }
  await page.keyboard.press('Shift+Enter');
  await page.getByRole('heading', { name: 'The whole of course 1' }).waitFor();
  for (let stop = 0; stop < 6; stop++) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.tagName === 'SUMMARY')) break;
  }
  await page.keyboard.press('Enter');
  await tabTo('combobox', 'Instrument');
  // Spirit level is in hand for a course; a letter chooses another.
  await page.keyboard.press('m');
  expect(await page.getByRole('combobox', { name: 'Instrument' }).inputValue()).toBe('mason-line');
  await page.keyboard.press('Tab');
  await page.keyboard.press('ArrowDown');
  await tabTo('button', 'Note it');
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: 'Notebook: 1' }).waitFor();
  expect(problems).toEqual([]);
  await close();
});
