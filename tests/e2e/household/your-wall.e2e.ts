import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { QUESTIONS, STOPS } from '../../../lib/household/stops';
import { expectInOrder, openBrowser, pagesInTurn, visit } from '../browser';
import { lookAt } from '../practice/practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const PHONE = { width: 390, colours: 'light' } as const;
const DESK = { width: 1280, colours: 'dark' } as const;
const ROUND = '/your-wall/look-round';
const KIB = 1024;

const headed = (page: Page, name: string) =>
  page.getByRole('heading', { level: 2, name, exact: true }).waitFor();
const group = (page: Page, ask: string) => page.getByRole('group', { name: ask, exact: true });

test.each(pagesInTurn(['/your-wall', '/your-wall/papers', '/your-wall/limits', ROUND]))(
  '$path is in order, on a phone and on a desk, by day and by night',
  (each) => expectInOrder(browser, each, (page) => page.getByRole('heading', { level: 1 }).waitFor()),
);

test('is one tap from the top of every page', async () => {
  const { page, close } = await visit(browser, '/limits/canada', PHONE);
  await page.getByRole('navigation', { name: 'Main' }).getByRole('link', { name: 'Your wall' }).tap();
  await page.getByRole('heading', { level: 1, name: 'Your brick wall' }).waitFor();
  await page.getByRole('link', { name: 'Something is wrong with it' }).tap();
  await page.getByRole('radio', { name: 'Something is wrong with it', checked: true }).waitFor();
  await close();
});

describe('the look round', () => {
  test('is walked by touch, kept over a reload, printed, opened again and deleted', async () => {
    const { page, problems, close } = await visit(browser, ROUND, PHONE);
    await page.getByLabel(/Name of the wall/).fill('North wall');
    await page.getByLabel(/A licensed engineer/).fill('555 0100');
    await lookAt(page, 'look-start', PHONE);
    await page.getByRole('button', { name: 'Begin the look round' }).tap();
    for (const stop of STOPS) {
      await headed(page, stop.title);
      for (const { ask, id } of QUESTIONS.filter((each) => each.stop === stop.id)) {
        const good = ['steel', 'slots', 'proof'].includes(id) ? 'Yes' : 'No';
        const words = ['gable', 'inside'].includes(stop.id) ? 'I can’t see that' : good;
        const choices = group(page, ask);
        if ((await choices.getByRole('textbox').count()) > 0) {
          if (id === 'bearing') await choices.getByRole('textbox').fill('60');
          else await choices.getByText('I don’t know').tap();
        } else await choices.getByText(words, { exact: true }).tap();
      }
      if (stop.id === 'street' || stop.id === 'base') await lookAt(page, `look-${stop.id}`, PHONE);
      await page.getByRole('link', { name: /^Next: / }).tap();
    }
    await headed(page, 'Your note');
    await page.getByText('Have a licensed engineer look this week').first().waitFor();
    // NBC 2020, 9.20.5.2: 90 mm at each end.
    await page.getByText('Steel past the side of the opening: 60 mm. Limit: at least 90 mm.').waitFor();
    expect(await page.getByRole('link', { name: 'Engineer: 555 0100' }).getAttribute('href')).toBe(
      'tel:5550100',
    );
    await page.getByText('Does the gable lean, or is there a gap between it and the roof?').waitFor();
    await lookAt(page, 'look-note', PHONE);
    for (const format of ['A4', 'Letter']) {
      const printed = (await page.pdf({ format })).toString('latin1');
      expect(printed.match(/\/Type \/Page\b/g), format).toHaveLength(1);
    }

    await page.getByText('Kept on this device.').waitFor();
    await page.reload();
    await headed(page, 'Your note');
    await page.getByText('Steel past the side of the opening: 60 mm.').waitFor();
    await page.getByLabel('Where is the wall?').selectOption('ontario');
    // OBC 2024, 9.20.5.2: 150 mm.
    await page.getByText('Limit: at least 150 mm.').waitFor();
    await page.getByRole('radio', { name: 'inches' }).check();
    await page
      .getByText('Steel past the side of the opening: 2 3/8 in. Limit: at least 5 15/16 in.')
      .waitFor();

    await page.getByRole('link', { name: 'All looks on this device' }).tap();
    await page.getByText('North wall').first().waitFor();
    await lookAt(page, 'look-kept', PHONE);
    await page.getByRole('button', { name: 'Delete' }).tap();
    await page.getByRole('button', { name: 'Yes, delete it' }).tap();
    await page.getByText('North wall').first().waitFor({ state: 'detached' });
    await page.reload();
    await page.getByRole('button', { name: 'Begin the look round' }).waitFor();
    expect(await page.getByText('North wall').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });

  test.each([PHONE, DESK])(
    'sends away from a wall that leans, by keyboard alone at $width px',
    async (look) => {
      const { page, problems, close } = await visit(browser, `${ROUND}#wrong`, look);
      const tabTo = async (name: RegExp, most: number) => {
        for (let stops = 0; stops < most; stops++) {
          const at = await page.evaluate(() => {
            const active = document.activeElement === document.body ? null : document.activeElement;
            const near = active?.closest('fieldset')?.querySelector('legend')?.textContent ?? '';
            return `${near} ${active?.closest('label')?.textContent ?? active?.textContent}`;
          });
          if (name.test(at)) return;
          await page.keyboard.press('Tab');
        }
        throw new RangeError(`${name} is not within ${most} stops of the keyboard`);
      };
      await page.getByRole('button', { name: 'Begin the look round' }).waitFor();
      await tabTo(/^ Begin the look round/, 40);
      await page.keyboard.press('Enter');
      await headed(page, 'From the street');
      await page.waitForFunction(() => document.activeElement?.textContent === 'From the street');
      await tabTo(/Does the wall lean/, 20);
      await page.keyboard.press('Space');
      await page.getByRole('alert').getByText('Go away from the wall now.').waitFor();
      await lookAt(page, 'look-alarm', look);
      await tabTo(/What to do now/, 6);
      await page.keyboard.press('Enter');
      await headed(page, 'Your note');
      await page.getByText('Keep people farther away than the wall is tall, on both sides.').waitFor();
      await lookAt(page, 'look-note-away', look);
      // Nothing is measured on such a wall.
      await page.goBack();
      await page.getByRole('link', { name: 'Each face' }).press('Enter');
      await headed(page, 'Each face');
      expect(await page.getByRole('textbox').first().isDisabled()).toBe(true);
      expect(problems).toEqual([]);
      await close();
    },
  );

  test('in a browser that keeps nothing it says so, and still gives a note', async () => {
    const { page, close } = await visit(browser, '/your-wall', PHONE);
    await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
    await page.goto(page.url().replace('/your-wall', ROUND));
    await page.getByRole('button', { name: 'Begin the look round' }).tap();
    await page.getByText('This browser keeps nothing.').waitFor();
    await close();
  });
});

/** The budgets of first-load.e2e.ts: a page to read, and a page to work on with its answers and its note. */
test.each([
  ['/your-wall', 140 * KIB],
  ['/your-wall/papers', 140 * KIB],
  ['/your-wall/limits', 140 * KIB],
  [ROUND, 180 * KIB],
])('%s loads no more script at first than %i bytes', async (path, budget) => {
  const { page, close } = await visit(browser, path, PHONE);
  const sizes = await page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .flatMap((entry) =>
        entry instanceof PerformanceResourceTiming && entry.name.endsWith('.js')
          ? [entry.encodedBodySize]
          : [],
      ),
  );
  expect(Math.min(...sizes)).toBeGreaterThan(0);
  expect(sizes.reduce((total, size) => total + size, 0)).toBeLessThanOrEqual(budget);
  await close();
});
