import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { faultyBrief, seedAfter } from '../../../lib/drills/faulty-brief';
import { measuredPair } from '../../../lib/drills/pair/measured-pair';
import { codeOf } from '../../../lib/generate/wall-code';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { inspect } from '../../../lib/inspect/inspect';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, lookAt, touch } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

/** A wall on ties: only such a one is looked at before it is covered. */
function pairOnTies() {
  for (let seed = 1; ; seed++) {
    const asked = { topic: 'line', kind: 'plain-panel', difficulty: 1, rules: 'canada', seed } as const;
    const made = measuredPair(faultyBrief(asked, ['proud-unit']));
    if (made.spoiled.ties.length > 0) return made;
  }
}

const pair = pairOnTies();
const { brief } = pair;
const [finding] = inspect(pair.spoiled, brief.rules);
if (finding === undefined) throw new RangeError('the spoiled wall has no finding');
const odd = finding.parts[0] ?? '';
const name = CATALOGUE[finding.check].name;
const SPOILED = `Wall ${pair.spoiledIs}`;
const ADDRESS = `/practise/pair/${codeOf(brief)}`;

function partOn(page: Page, wall: string) {
  return page.getByRole('region', { name: wall, exact: true }).locator(`[data-part="${odd}"]`);
}

/** What is seen of each wall, as the drawing says it. */
async function seenBoxes(page: Page): Promise<readonly (string | null)[]> {
  const drawings = page.getByRole('region', { name: /^Wall [12]$/ }).locator('svg[role="presentation"]');
  return Promise.all((await drawings.all()).map((drawing) => drawing.getAttribute('viewBox')));
}

/** Presses a key until the part that has the focus is the one wanted. */
async function pressUntil(page: Page, key: string, wanted: RegExp): Promise<void> {
  for (let presses = 0; presses < 60; presses++) {
    const at = await page.evaluate(() => document.activeElement?.getAttribute('data-part'));
    if (wanted.test(at ?? '')) return;
    await page.keyboard.press(key);
  }
  throw new RangeError(`${key} does not lead to ${wanted}`);
}

describe.each(LOOKS)('a pair at $width px, $colours', (look) => {
  test('is compared, pointed to and marked, and told by its measures on both walls', async () => {
    const { page, problems, close } = await visit(browser, ADDRESS, look);
    await lookAt(page, 'pair-1-start', look);

    await page.getByRole('radio', { name: 'Before cover' }).check();
    await page.getByRole('radio', { name: 'Up close' }).check();
    const [whole] = await seenBoxes(page);
    await page.getByRole('region', { name: 'Wall 1' }).getByRole('button', { name: 'Nearer' }).click();
    const nearer = await seenBoxes(page);
    expect(nearer[0]).not.toBe(whole);
    expect(nearer[1]).toBe(nearer[0]);
    await page.getByRole('region', { name: 'Wall 2' }).getByRole('button', { name: 'Whole wall' }).click();
    expect(await seenBoxes(page)).toEqual([whole, whole]);

    await page.getByRole('radio', { name: SPOILED, exact: true }).check();
    const naming = page.getByLabel('What is wrong there?');
    if (look.width < 600) await touch(page, partOn(page, SPOILED), naming);
    else await partOn(page, SPOILED).click();
    await naming.selectOption(name);
    await lookAt(page, 'pair-2-naming', look);
    await page.getByRole('button', { name: 'Mark it' }).click();
    await page.getByRole('list', { name: 'Your marks' }).getByText(name).waitFor();
    await page.reload();
    await page.getByRole('list', { name: 'Your marks' }).getByText(name).waitFor();
    await page.getByRole('button', { name: 'I am done: measure both walls' }).click();

    await page.getByRole('heading', { name: `Right: wall ${pair.spoiledIs} is the spoiled one` }).waitFor();
    await page.getByText('You found every difference.').waitFor();
    await page.getByText(/^At the same place, wall [12] has/).waitFor();
    await lookAt(page, 'pair-3-told', look);
    await page.getByRole('link', { name: 'Another pair like it' }).click();
    await page.waitForURL(`**/practise/pair/${codeOf(measuredPair(seedAfter(brief)).brief)}`);
    await page.getByRole('heading', { name: 'What differs?', exact: true }).waitFor();
    expect(problems).toEqual([]);
    await close();
  });

  test('pointing to the sound wall is told so, and shows what differs', async () => {
    const { page, close } = await visit(browser, ADDRESS, look);
    await awake(page);
    await page.getByRole('radio', { name: `Wall ${3 - pair.spoiledIs}`, exact: true }).check();
    await page.getByRole('button', { name: 'Tell me what is different' }).click();
    await page.getByRole('heading', { name: `No: wall ${pair.spoiledIs} is the spoiled one` }).waitFor();
    await page.getByRole('heading', { name: new RegExp(name) }).waitFor();
    await lookAt(page, 'pair-4-wrong-side', look);
    await close();
  });
});

test('a pair is done by the keyboard alone', async () => {
  const { page, close } = await visit(browser, ADDRESS, { width: 1280, colours: 'light' });
  await awake(page);
  await page.getByRole('radio', { name: 'Wall 1', exact: true }).focus();
  await page.keyboard.press('Space');
  if (pair.spoiledIs === 2) await page.keyboard.press('ArrowRight');
  const grid = page.getByRole('grid', { name: SPOILED, exact: true });
  await grid.locator('[tabindex="0"]').focus();
  const [, course = '', position = ''] = /^A(\d+)\.(\d+)$/.exec(odd) ?? [];
  await page.keyboard.press('Control+Home');
  // At a corner of taller stones the way up leads from stone to stone: in the middle of the wall it leads through every course.
  await pressUntil(page, 'ArrowRight', /^A1\.6$/);
  await pressUntil(page, 'ArrowUp', new RegExp(`^A${course}\\.`));
  await page.keyboard.press('Home');
  await pressUntil(page, 'ArrowRight', new RegExp(`^A${course}\\.${position}$`));
  await page.keyboard.press('Enter');
  await page.getByText(`Course ${course}, unit ${position}`, { exact: true }).waitFor();
  const naming = page.getByLabel('What is wrong there?');
  await naming.focus();
  await page.keyboard.type(name);
  expect(await naming.inputValue()).toBe(finding.check);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^I am done/ }).focus();
  await page.keyboard.press('Enter');
  await page.getByText('You found every difference.').waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('pair-heading');
  await close();
});

test('a wrong code says what is wrong, and a pair asked for leads on to one', async () => {
  const look = { width: 390, colours: 'light' } as const;
  const { page, close } = await visit(browser, '/practise/pair', look);
  await lookAt(page, 'pair-0-ask', look);
  await page.getByLabel('Topic').selectOption('ties');
  await page.getByLabel(/^Wall number/).fill('12');
  await page.getByRole('button', { name: 'Lay the pair' }).click();
  await page.waitForURL(/\/practise\/pair\/[2-9A-Z]{3}-[2-9A-Z]{4}-[2-9A-Z]{3}$/);
  await close();
  const wrong = await visit(browser, '/practise/pair/3K7', look);
  await wrong.page.getByText('Has 3 signs, a code has 10.').waitFor();
  await wrong.close();
});
