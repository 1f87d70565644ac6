import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { accessibilityProblems, LOOKS, openBrowser, visit } from '../browser';
import { firstWall, lookAt, mark, measure, pick, seeWhole, touch } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const ODD = 'twisted-unit';

/** Two faults at least, one of them a twisted unit, where Canada's rules say nothing: good practice stands in. */
const line = firstWall({ topic: 'line', kind: 'plain-panel', difficulty: 3, rules: 'canada' }, (findings) => {
  return findings.length > 1 && findings.some(({ check, kind }) => check === ODD && kind === 'good practice');
});
const odd = line.findings.find(({ check }) => check === ODD);
if (odd === undefined) throw new RangeError('the wall has no finding');
const oddUnit = odd.parts[0] ?? '';
const oddName = CATALOGUE[odd.check].name;
const sound = firstWall(
  { topic: 'joints', kind: 'window-panel', difficulty: 2, rules: 'united-states' },
  (findings) => {
    return findings.length === 0;
  },
);
const falling = firstWall(
  { topic: 'support', kind: 'window-panel', difficulty: 2, rules: 'ontario' },
  (findings) => {
    return findings.some(({ hazard }) => hazard === 'could fall');
  },
);

describe.each(LOOKS)('a wall at $width px, $colours', (look) => {
  test('is read with the pointer, from the first look to the result', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${line.code}`, look);
    await lookAt(page, '1-start', look);

    await seeWhole(page);
    await (look.width < 600 ? touch : pick)(page, oddUnit);
    await lookAt(page, '2-picked', look);
    await measure(page, odd.check);
    await page.getByRole('radio', { name: oddName, exact: true }).click();
    await page.getByText(/^Say more/).click();
    await page.getByRole('button', { name: /^Use / }).first().click();
    await page.getByRole('radio', { name: 'Good practice', exact: true }).check();
    await page.getByRole('radio', { name: 'Put it right now' }).check();
    await lookAt(page, '2-said-more', look);
    await page.getByRole('radio', { name: 'Certain', exact: true }).check();
    await page.getByRole('button', { name: 'Mark it' }).click();
    await page.getByRole('status').getByText(`Mark 1: ${oddName}`).waitFor({ state: 'attached' });

    // The finger has brought the wall closer: the foot of it may be out of sight.
    await seeWhole(page);
    await pick(page, 'A1.2');
    await mark(page, 'Sliver', 'Unsure');
    await pick(page, 'A2.3');
    await mark(page, 'Out of plumb', 'Unsure');
    expect(await page.getByRole('button', { name: /^Remove mark/ }).count()).toBe(3);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByRole('button', { name: /^Remove mark/ }).count()).toBe(2);
    await lookAt(page, '3-marked', look);

    await pick(page, 'A2.3');
    await page.getByRole('radio', { name: 'Out of plumb', exact: true }).click();
    await page.getByRole('radio', { name: 'Certain', exact: true }).check();
    await lookAt(page, '3-half-marked', look);
    await page.reload();
    const half = page.getByRole('region', { name: 'Course 2, unit 3' });
    await half.getByText('Out of plumb.', { exact: true }).waitFor();
    expect(await half.getByRole('radio', { name: 'Certain', exact: true }).isChecked()).toBe(true);
    await lookAt(page, '3-half-marked-again', look);
    await half.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Remove mark 2' }).waitFor();
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await lookAt(page, '4-review', look);
    await page.getByRole('button', { name: 'Hand in 2 marks' }).click();

    await page.getByRole('heading', { name: 'Result' }).waitFor();
    expect(await page.getByText(`You found 1 of ${line.findings.length} faults.`).count()).toBe(1);
    expect(await page.getByText('False mark', { exact: true }).count()).toBe(1);
    const marks = await page.getByLabel('Five marks, each apart').getByRole('definition').allTextContents();
    expect(marks).toEqual([`1 of ${line.findings.length}`, '1 of 1', '1 of 1', '1 of 1', '1 of 1']);
    await lookAt(page, '5-result', look);
    await page
      .getByRole('button', { name: /^Show it on the wall/ })
      .first()
      .click();
    await lookAt(page, '6-shown', look);
    await page.getByText('Lengths and list').click();
    await page.getByRole('radio', { name: 'inches' }).check();
    await lookAt(page, '7-inches', look);
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await lookAt(page, '7-printed', look);
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: null });
    await page.getByRole('link', { name: 'Next wall on this topic' }).click();
    await page.waitForURL(`**/walls/${line.next}`);
    expect(problems).toEqual([]);
    await close();
  });

  test('can be sound, and saying so is an answer', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${sound.code}`, look);
    await page.getByRole('button', { name: 'This wall is sound' }).click();
    await lookAt(page, '8-says-sound', look);
    await page.getByRole('button', { name: 'Hand in: the wall is sound' }).click();
    await page.getByText('This wall is sound, and you said so.').waitFor();
    await lookAt(page, '9-sound-result', look);
    expect(problems).toEqual([]);
    await close();
  });

  test('keeps the score at half while something that could fall is missed', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${falling.code}`, look);
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await page.getByRole('button', { name: 'This wall is sound' }).click();
    await page.getByRole('button', { name: 'Hand in: the wall is sound' }).click();
    await page.getByText('Could fall', { exact: true }).first().waitFor();
    expect(await page.getByText('Keep people and animals away now.').count()).toBe(1);
    await lookAt(page, '10-could-fall', look);
    expect(problems).toEqual([]);
    await close();
  });
});

test('the parts of a wall have roles and names', async () => {
  const { page, close } = await visit(browser, `/walls/${sound.code}`, { width: 1280, colours: 'light' });
  expect(await accessibilityProblems(page)).toEqual([]);
  await close();
});

describe('by keyboard alone', () => {
  test('a wall is marked, the mark changed, and handed in', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${line.code}`, {
      width: 1280,
      colours: 'light',
    });
    const press = async (key: string, times = 1) => {
      for (let time = 0; time < times; time++) await page.keyboard.press(key);
    };
    const tabTo = async (what: RegExp, most: number): Promise<number> => {
      for (let stops = 1; stops <= most; stops++) {
        await page.keyboard.press('Tab');
        const name = await page.evaluate(() => {
          const { activeElement: at } = document;
          return `${at?.getAttribute('role') ?? at?.tagName} ${at?.getAttribute('aria-label') ?? at?.textContent}`;
        });
        if (what.test(name)) return stops;
      }
      throw new RangeError(`${what} is not within ${most} stops of the keyboard`);
    };
    // Eight of them are the skip link and the header, and one skips the hints of the first wall.
    expect(await tabTo(/Check once more/, 15)).toBeLessThanOrEqual(15);
    await page.reload();
    await page.locator('[data-ready="true"]').waitFor();

    // Ten stops lie before it, eight of them the skip link and the header.
    await tabTo(/^gridcell/, 11);
    const [, course = '1', position = '1'] = /(\d+)\.(\d+)/.exec(oddUnit) ?? [];
    await press('ArrowUp', Number(course) - 1);
    await press('Home');
    await press('ArrowRight', Number(position) - 1);
    await press('Enter');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain(`unit ${position}`);

    await tabTo(/^INPUT/, 8);
    await page.keyboard.type(oddName);
    await press('Tab');
    await press('Space');
    await tabTo(/Mark it/, 4);
    await press('Enter');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('data-part'))).toBe(oddUnit);

    await tabTo(/Change mark 1/, 12);
    await press('Enter');
    await tabTo(/Change the mark/, 12);
    await press('Enter');
    await tabTo(/Check once more/, 15);
    await press('Enter');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('review-heading');
    await tabTo(/Hand in 1 mark/, 15);
    await press('Enter');
    // What marks and shows the result may still be on its way.
    await page.waitForFunction(() => document.activeElement?.id === 'result-heading');
    expect(await page.getByText(`You found 1 of ${line.findings.length} faults.`).count()).toBe(1);
    expect(problems).toEqual([]);
    await close();
  });
});

test('at 400 % zoom (320 × 256) a part is picked and all is said of it: nothing lies over the form', async () => {
  const { page, problems, close } = await visit(browser, `/walls/${line.code}`, {
    width: 320,
    colours: 'light',
  });
  await page.setViewportSize({ width: 320, height: 256 });
  await touch(page, oddUnit);
  await page.getByRole('radio', { name: oddName, exact: true }).click();
  await page.getByText(/^Say more/).click();
  await page.getByRole('radio', { name: 'Good practice', exact: true }).check();
  await page.getByRole('radio', { name: 'Certain', exact: true }).check();
  await page.getByRole('button', { name: 'Mark it' }).click();
  await page.getByRole('button', { name: 'Remove mark 1' }).waitFor();
  await lookAt(page, '15-400-percent', { width: 320, colours: 'light' });
  expect(problems).toEqual([]);
  await close();
});
