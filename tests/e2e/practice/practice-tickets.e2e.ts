import type { Browser } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import { LOOKS, openBrowser, visit } from '../browser';
import { firstWall, lookAt, mark } from './practice-steps';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

/** One mixing is at fault, and that is all. */
const wall = firstWall(
  { topic: 'mortar', kind: 'plain-panel', difficulty: 2, rules: 'canada' },
  (findings) => findings.length === 1 && findings[0]?.parts[0]?.startsWith('batch-') === true,
);
const [finding] = wall.findings;
if (finding === undefined) throw new RangeError('the wall has no finding');
const faulty = finding.parts[0] ?? '';
const sound = faulty === 'batch-1' ? 'batch-2' : 'batch-1';
const name = CATALOGUE[finding.check].name;

describe.each(LOOKS)('the mixing tickets at $width px, $colours', (look) => {
  test('are read, marked, and shown again by the result, each on its ticket', async () => {
    const { page, problems, close } = await visit(browser, `/walls/${wall.code}`, look);
    await page.getByText(/^You cannot see from the front what is in the mortar\./).waitFor();
    const tickets = page.getByRole('radio', { name: 'Mixing tickets' });
    await tickets.check();
    const ticket = (part: string) => page.locator(`[data-part="${part}"]`);
    await lookAt(page, 'tickets-1', look);

    for (const part of [faulty, sound]) {
      await ticket(part).click();
      await page.getByRole('heading', { name: `Mixing ${part.slice(-1)}` }).waitFor();
      // Nothing lies over what is being marked.
      const at = await ticket(part).boundingBox();
      const card = await page.locator('[aria-labelledby="picked-name"]').boundingBox();
      expect(at && card && (look.width > 600 || at.y + at.height < card.y)).toBe(true);
      if (part === faulty) await lookAt(page, 'tickets-2-picked', look);
      await mark(page, name, 'Unsure');
    }
    await page.getByRole('img', { name: 'Mark 2' }).waitFor();
    await page.getByRole('radio', { name: 'Up close' }).check();
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await page.getByRole('button', { name: 'Look at mortar again' }).click();
    expect(await tickets.isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await page.getByRole('button', { name: 'Hand in 2 marks' }).click();
    await page.getByRole('heading', { name: 'Result' }).waitFor();

    await page.getByRole('radio', { name: 'Up close' }).check();
    const shows = page.getByRole('button', { name: /^Show it on the wall/ });
    await shows.first().click();
    await page.getByRole('img', { name: 'Found 1' }).waitFor();
    expect(await tickets.isChecked()).toBe(true);
    await lookAt(page, 'tickets-3-found', look);
    await page.getByRole('radio', { name: 'Up close' }).check();
    await shows.last().click();
    await page.getByRole('img', { name: 'False mark 2' }).waitFor();
    expect(await tickets.isChecked()).toBe(true);
    expect(problems).toEqual([]);
    await close();
  });
});

test('on paper the tickets stand in words under the wall, and nowhere else', async () => {
  const { page, close } = await visit(browser, `/walls/${wall.code}`, { width: 1280, colours: 'light' });
  const lines = page.getByRole('listitem').filter({ hasText: /^Mixing \d, courses 1 to/ });
  expect(await lines.count()).toBe(0);
  // On a busy machine the page may be drawn before it listens.
  await expect
    .poll(async () => {
      await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
      return await lines.count();
    })
    .toBe(1);
  expect(await page.getByRole('grid').count()).toBe(1);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  expect(await lines.count()).toBe(0);
  await close();
});
