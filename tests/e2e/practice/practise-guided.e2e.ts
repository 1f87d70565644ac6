import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { seedAfter } from '../../../lib/drills/faulty-brief';
import { type FaultyWall, faultyWall } from '../../../lib/drills/faulty-wall';
import { guidedWall } from '../../../lib/drills/guided/guided-rows';
import { halfOf } from '../../../lib/drills/guided/guided-steps';
import { codeOf } from '../../../lib/generate/wall-code';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { Finding } from '../../../lib/inspect/finding';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, lookAt, touch } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

interface Guided {
  readonly first: FaultyWall;
  readonly second: readonly Finding[];
}

/** The first guided wall whose second step leaves this half, with one finding there, at a single unit. */
function guidedWith(half: 'name' | 'place'): Guided {
  let first = faultyWall({ topic: 'line', kind: 'plain-panel', difficulty: 1, rules: 'canada', seed: 1 });
  for (let tries = 0; tries < 500; tries++) {
    first = faultyWall(seedAfter(first.brief));
    const second = guidedWall(first, 2).findings;
    const atUnit = /^[A-Z]\d+\.\d+$/.test(second[0]?.parts[0] ?? '');
    if (halfOf(first.brief.seed) === half && second.length === 1 && atUnit) return { first, second };
  }
  throw new RangeError(`no guided wall leaves the ${half}`);
}

describe.each(LOOKS)('a guided wall at $width px, $colours', (look) => {
  test.each(['name', 'place'] as const)('shows all, then leaves the %s, then all', async (half) => {
    const { first, second } = guidedWith(half);
    const [finding] = second;
    if (finding === undefined) throw new RangeError('no finding');
    const { page, problems, close } = await visit(browser, `/practise/guided/${codeOf(first.brief)}`, look);
    await page.getByRole('heading', { name: 'What is wrong with it' }).waitFor();
    await awake(page);
    for (const { check } of first.findings) await page.getByText(CATALOGUE[check].whyItMatters).waitFor();
    await page
      .getByRole('button', { name: /^Show it on the wall: 1/ })
      .first()
      .click();
    await lookAt(page, `guided-1-${half}`, look);
    await page.getByRole('link', { name: 'Next: a wall where you do half' }).click();

    await page.getByRole('heading', { name: 'Now you do half' }).waitFor();
    await awake(page);
    if (half === 'name') {
      await lookAt(page, 'guided-2-name', look);
      await page.getByRole('radio', { name: CATALOGUE[finding.check].name, exact: true }).check();
    } else {
      await page.getByText('Nothing picked yet.').waitFor();
      const part = page.locator(`[data-part="${finding.parts[0]}"]`);
      const picked = page.getByText(/^Picked: /);
      if (look.width < 600) await touch(page, part, picked);
      else await part.click();
      await picked.waitFor();
      await lookAt(page, 'guided-2-place', look);
    }
    await page.getByRole('button', { name: 'Check', exact: true }).click();
    await page.getByRole('heading', { name: '1 of 1 right' }).waitFor();
    await lookAt(page, `guided-2-told-${half}`, look);
    await page.getByRole('link', { name: 'Next: a wall on your own' }).click();

    await page.getByRole('link', { name: 'Read the wall on your own' }).waitFor();
    await lookAt(page, 'guided-3', look);
    await page.getByRole('link', { name: 'Read the wall on your own' }).click();
    await page.waitForURL(`**/walls/${codeOf(guidedWall(first, 3).brief)}`);
    expect(problems).toEqual([]);
    await close();
  });
});

test('half a wall is done by the keyboard alone', async () => {
  const { first, second } = guidedWith('place');
  const [, course = '', position = ''] = /^A(\d+)\.(\d+)$/.exec(second[0]?.parts[0] ?? '') ?? [];
  const { page, close } = await visit(browser, `/practise/guided/${codeOf(first.brief)}?step=2`, {
    width: 390,
    colours: 'light',
  });
  await awake(page);
  await page.getByRole('grid').locator('[tabindex="0"]').focus();
  await page.keyboard.press('Control+Home');
  for (let at = 1; at < Number(course); at++) await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Home');
  for (let at = 1; at < Number(position); at++) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await page.getByText(`Picked: Course ${course}, unit ${position}.`).waitFor();
  await page.getByRole('button', { name: 'Check', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: '1 of 1 right' }).waitFor();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('side-heading');
  await close();
});
