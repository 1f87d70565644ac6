import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { askOf, WALLS_A_ROUND } from '../../../lib/drills/quick/quick-round';
import { MAX_SEED } from '../../../lib/generate/brief';
import { LOOKS, openBrowser, visit } from '../browser';
import { lookAt } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

const ROUND = 7;
const ADDRESS = `/practise/quick?rules=canada&round=${ROUND}`;
const WAYS = [
  ['Guided wall', '/practise/guided'],
  ['Pair', '/practise/pair'],
  ['Quick look', '/practise/quick'],
  ['Full wall', '/walls'],
  ['Build your own', '/practise/build'],
] as const;
const SOUND = 'Sound';
const WRONG = 'Something is wrong';
/** Two of the answers are given wrongly on purpose: these places of the round. */
const MISTAKEN = [2, 5];

function answerAt(place: number): string {
  const { faulty } = askOf({ look: 'face', level: 1, round: ROUND }, place, MAX_SEED);
  return faulty === MISTAKEN.includes(place) ? SOUND : WRONG;
}

async function answerAll(page: Page, give: (name: string) => Promise<void>): Promise<void> {
  for (let place = 0; place < WALLS_A_ROUND; place++) {
    await page.getByText(`Wall ${place + 1} of ${WALLS_A_ROUND}`).waitFor();
    await give(answerAt(place));
  }
  await page.getByRole('heading', { name: /^You were right on/ }).waitFor();
}

test.each(LOOKS)('the ways to practise are told, at $width px', async (look) => {
  const { page, problems, close } = await visit(browser, '/', look);
  await page.getByRole('link', { name: 'Practise', exact: true }).click();
  await page.getByRole('heading', { name: 'Ways to practise' }).waitFor();
  await lookAt(page, 'practise-ways', look);
  expect(problems).toEqual([]);
  await close();
});

test.each(WAYS)('the way %s is led to', async (way, address) => {
  const { page, problems, close } = await visit(browser, '/practise', { width: 390, colours: 'light' });
  await page.getByRole('main').getByRole('link', { name: way, exact: true }).click();
  await page.waitForURL((url) => url.pathname === address);
  await page
    .getByRole('heading', { level: 1 })
    .and(page.getByText(/^(?!Ways)/))
    .waitFor();
  expect(problems).toEqual([]);
  await close();
});

describe.each(LOOKS)('a quick look at $width px, $colours', (look) => {
  test('without a clock: ten answers, each wall with its key, those wrong first, kept on the device', async () => {
    const { page, problems, close } = await visit(browser, ADDRESS, look);
    await lookAt(page, 'quick-1-start', look);
    await page.getByRole('radio', { name: 'No clock' }).check();
    const press = (name: string) =>
      look.width < 600
        ? page.getByRole('button', { name, exact: true }).tap()
        : page.getByRole('button', { name, exact: true }).click();
    await press('Show the first wall');
    await page.getByText('Wall 1 of 10').waitFor();
    await lookAt(page, 'quick-2-wall', look);
    await answerAll(page, press);
    await page.getByRole('heading', { name: 'You were right on 8 of 10 walls' }).waitFor();
    const titles = await page.getByRole('heading', { level: 3 }).allTextContents();
    expect(titles.slice(0, 3)).toEqual(['Wall 3: ✕ wrong', 'Wall 6: ✕ wrong', 'Wall 1: ✓ right']);
    await page.getByText('Look at wall 3 again').click();
    await page.getByRole('grid').waitFor();
    await lookAt(page, 'quick-5-over', look);
    expect(await page.getByText(/d′/).count()).toBe(0);
    expect(await page.getByText(/Too few walls yet/).count()).toBe(1);

    await page.reload();
    await page
      .getByRole('heading', { name: 'From in front, easy: all your rounds on this device, 1' })
      .waitFor();
    await lookAt(page, 'quick-6-standing', look);
    await page.getByRole('radio', { name: 'No clock' }).check();
    await press('Show the first wall');
    await answerAll(page, press);
    await page.getByText('so it is not counted again').waitFor();
    await page
      .getByRole('heading', { name: 'From in front, easy: all your rounds on this device, 1' })
      .waitFor();
    await page.getByRole('button', { name: 'Delete it' }).click();
    await page.getByRole('button', { name: 'Yes, delete it' }).click();
    await page.getByRole('heading', { name: /all your rounds/ }).waitFor({ state: 'detached' });
    expect(problems).toEqual([]);
    await close();
  });

  test('the wall is covered when its time is up, and the answer is still taken', async () => {
    const { page, problems, close } = await visit(browser, ADDRESS, look);
    await page.clock.install();
    await page.getByRole('radio', { name: '10 seconds' }).check();
    await page.getByRole('button', { name: 'Show the first wall' }).click();
    await page.getByRole('grid').waitFor();
    await page.clock.runFor(4_000);
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.getByText('The clock is stopped').waitFor();
    await lookAt(page, 'quick-3-paused', look);
    await page.clock.runFor(60_000);
    await page.getByRole('button', { name: 'Go on' }).click();
    await page.getByRole('grid').waitFor();
    await page.clock.runFor(7_000);
    await page.getByText('The time is up. What do you say?').waitFor();
    expect(await page.getByRole('grid').count()).toBe(0);
    await lookAt(page, 'quick-4-covered', look);
    await page.getByRole('button', { name: SOUND, exact: true }).click();
    await page.getByText('Wall 2 of 10').waitFor();
    expect(problems).toEqual([]);
    await close();
  });
});

test('a round is gone through by the keyboard alone', async () => {
  const { page, problems, close } = await visit(browser, ADDRESS, { width: 1280, colours: 'light' });
  await tabTo(page, 'radio', '30 seconds');
  await page.keyboard.press('ArrowRight');
  expect(await page.getByRole('radio', { name: 'No clock' }).isChecked()).toBe(true);
  await tabTo(page, 'button', 'Show the first wall');
  await page.keyboard.press('Enter');
  await answerAll(page, async (name) => {
    await tabTo(page, 'button', name);
    await page.keyboard.press('Enter');
  });
  await page.getByRole('heading', { name: 'You were right on 8 of 10 walls' }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('round-heading');
  expect(problems).toEqual([]);
  await close();
});

test('a reload in the middle of a round goes on where it was', async () => {
  const { page, close } = await visit(browser, ADDRESS, { width: 390, colours: 'light' });
  await page.getByRole('radio', { name: 'No clock' }).check();
  await page.getByRole('button', { name: 'Show the first wall' }).click();
  for (const _ of [1, 2, 3]) await page.getByRole('button', { name: SOUND, exact: true }).click();
  await page.reload();
  await page.getByRole('button', { name: 'Go on with wall 4' }).click();
  await page.getByText('Wall 4 of 10').waitFor();
  await close();
});

test('up close, before cover, cut through, behind a unit and at the tickets a round can be taken, by the keyboard', async () => {
  const { page, problems, close } = await visit(browser, ADDRESS, { width: 390, colours: 'light' });
  for (const look of ['Up close', 'Before cover', 'Cut through', 'Behind a unit', 'Mixing tickets']) {
    await page.getByRole('navigation', { name: 'What to look at' }).getByRole('link', { name: look }).focus();
    await page.keyboard.press('Enter');
    await page.locator('[aria-current="true"]', { hasText: look }).waitFor();
    await page.getByRole('radio', { name: 'No clock' }).focus();
    await page.keyboard.press('Space');
    await page.getByRole('button', { name: 'Show the first wall' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('grid', { name: 'Wall 1 of the round' }).waitFor();
    await lookAt(page, `quick-look-${look.toLowerCase().replaceAll(' ', '-')}`, {
      width: 390,
      colours: 'light',
    });
  }
  expect(problems).toEqual([]);
  await close();
});

test('a record of a later version is said to be one, and left as it is', async () => {
  const { page, close } = await visit(browser, ADDRESS, { width: 390, colours: 'dark' });
  const later = '{"version":99,"rounds":[]}';
  await page.evaluate((text) => localStorage.setItem('quick-looks', text), later);
  await page.reload();
  await page.getByRole('alert').getByText('it says version 99').waitFor();
  await page.getByRole('radio', { name: 'No clock' }).check();
  await page.getByRole('button', { name: 'Show the first wall' }).click();
  await answerAll(page, (name) => page.getByRole('button', { name, exact: true }).click());
  expect(await page.evaluate(() => localStorage.getItem('quick-looks'))).toBe(later);
  await close();
});

/** Presses Tab until the control has the focus; the number of presses is bounded by what is on the page. */
async function tabTo(page: Page, role: 'button' | 'radio', name: string): Promise<void> {
  const wanted = page.getByRole(role, { name, exact: true });
  await wanted.waitFor();
  for (let presses = 0; presses < 60; presses++) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new RangeError(`Tab does not reach ${role} ${name}`);
}
