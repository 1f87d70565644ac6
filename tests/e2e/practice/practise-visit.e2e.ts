import type { Browser, Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { ACT_WORDS, CONDITION_WORDS, causeName } from '../../../components/visit/visit-words';
import { parseBrief } from '../../../lib/generate/brief';
import { codeOf } from '../../../lib/generate/wall-code';
import type { StreetAct, TodayAct } from '../../../lib/visit/acts';
import { openVisit } from '../../../lib/visit/open-visit';
import { calledWall } from '../../../lib/visit/visit-wall';
import { namesOf } from '../../../lib/wall/part-names';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, lookAt, NO_DOUBLE_TAP_MS, seeWhole, touch } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

/** A wall from which units are gone, where one cause alone is allowed. */
function peelingVisit() {
  for (let seed = 9000; ; seed++) {
    const called = calledWall(
      parseBrief({ topic: 'back-mortar', kind: 'plain-panel', difficulty: 1, rules: 'canada', seed }),
    );
    const opened = openVisit(called);
    const isOne = opened.causes.filter(({ inK }) => inK).length === 1;
    if (opened.failing.state.missing.size > 0 && opened.risk.loose.size > 0 && isOne)
      return { address: `/practise/visit/${codeOf(called.brief)}`, opened };
  }
}

const { address, opened } = peelingVisit();
const { shown, risk, causes } = opened;
const [next = ''] = risk.next;
const cause = causes.find(({ inK }) => inK);
if (cause === undefined) throw new RangeError('no cause is allowed');
const STREET: readonly StreetAct[] = ['keep-away', 'warn', 'look', 'go-near'];
const TODAY: readonly TodayAct[] = ['closed', 'owner', 'engineer', 'authority'];

const nameOf = namesOf(opened.laid);
const unitOn = (page: Page, part: string) => page.locator(`[role="grid"] [data-part="${part}"]`);

describe.each(LOOKS)('a visit at $width px, $colours', (look) => {
  test('done in its order and in full loses nothing: closed, looked at, marked, named, told', async () => {
    const { page, problems, close } = await visit(browser, address, look);
    await awake(page);
    await lookAt(page, 'visit-1-street', look);
    for (const act of STREET) await page.getByRole('button', { name: ACT_WORDS[act] }).click();
    await page.getByRole('button', { name: 'Do it, in this order' }).click();
    await page.getByRole('heading', { name: 'The face of the wall' }).waitFor();
    const pick = async (part: string) => {
      const name = page.locator(`#unit-name[data-part-name="${part}"]`);
      await seeWhole(page);
      // A hand is slower than this; two taps so close together would be a double tap.
      await page.waitForTimeout(NO_DOUBLE_TAP_MS);
      if (look.width < 600) await touch(page, unitOn(page, part), name);
      else await unitOn(page, part).click();
      await name.waitFor();
    };
    for (const { condition, parts } of shown) {
      await pick(parts[0] ?? '');
      await page.getByRole('button', { name: CONDITION_WORDS[condition], exact: true }).click();
    }
    await lookAt(page, 'visit-2-face', look);
    await page.getByRole('radio', { name: 'The unit I pick' }).check();
    await pick(next);
    await page.getByRole('button', { name: /^Say it is/ }).click();
    await page.getByLabel('The cause is').selectOption(causeName(cause.cause));
    for (const { sign } of cause.needs) await page.getByLabel(sign, { exact: true }).check();
    for (const act of TODAY) await page.getByLabel(ACT_WORDS[act]).check();
    await page.getByRole('button', { name: 'That is what I say' }).click();
    await page.getByRole('heading', { name: 'Nothing missed, nothing out of order' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('result-heading');
    await page.getByText('Right: no other is allowed.').waitFor();
    await lookAt(page, 'visit-3-told', look);

    const report = page.getByRole('region', { name: 'The report' });
    expect(await report.getByRole('listitem').count()).toBe(shown.length);
    const going = page.getByRole('region', { name: 'Let the wall go, unit by unit' });
    await going.getByRole('button', { name: 'Let it go' }).click();
    await going
      .getByRole('listitem')
      .filter({ hasText: nameOf(next) })
      .waitFor();
    await going.getByRole('button', { name: 'Put the last one back' }).click();
    expect(await going.getByRole('listitem').count()).toBe(0);
    expect(problems).toEqual([]);
    await close();
  });
});

test('by the keyboard alone: gone near too soon, touched what may come down, and told so', async () => {
  const { page, close } = await visit(browser, address, { width: 1280, colours: 'light' });
  await awake(page);
  for (const act of ['go-near', 'keep-away'] as const) {
    await page.getByRole('button', { name: ACT_WORDS[act] }).focus();
    await page.keyboard.press('Enter');
  }
  await page.getByRole('button', { name: 'Do it, in this order' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'The face of the wall' }).waitFor();
  const grid = page.getByRole('grid', { name: 'The wall' });
  await grid.locator('[tabindex="0"]').focus();
  await page.keyboard.press('Control+Home');
  const [, course = ''] = /^A(\d+)\./.exec(next) ?? [];
  for (let presses = 0; presses < 200; presses++) {
    const at = (await page.evaluate(() => document.activeElement?.getAttribute('data-part'))) ?? '';
    if (at === next) break;
    await page.keyboard.press(at.startsWith(`A${course}.`) ? 'ArrowRight' : 'ArrowUp');
  }
  await page.keyboard.press('Enter');
  await page.locator(`#unit-name[data-part-name="${next}"]`).waitFor();
  await page.getByRole('button', { name: 'Touch it with a fingertip' }).focus();
  await page.keyboard.press('Enter');
  await page.getByText(/^Hands off\./).waitFor();
  await page.getByRole('radio', { name: 'None: nothing hangs loose' }).focus();
  await page.keyboard.press('Space');
  await page.getByLabel('The cause is').selectOption('blow');
  await page.getByRole('button', { name: 'That is what I say' }).focus();
  await page.keyboard.press('Enter');
  await page
    .getByText(/^Too soon:/)
    .first()
    .waitFor();
  await page.getByText(/^Touched though it, or something above it/).waitFor();
  await page.getByText(/^No: it needs a sign/).waitFor();
  await close();
});
