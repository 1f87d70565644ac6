import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { THEMES, type Theme } from '../../../app/frame/theme';
import type { Brief } from '../../../lib/generate/brief';
import { layWall } from '../../../lib/generate/generate';
import { codeOf } from '../../../lib/generate/wall-code';
import type { CheckId, Finding } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import { toleranceOf } from '../../../lib/instruments/tolerance';
import { accessibilityProblems, type Look, sidewaysOverflow } from '../browser';

/** A folder for a picture of every state, for whoever wants to look at them. */
const { SHOTS } = process.env;

/** States of a test file that were looked at in these colours: another width does not make them paler. */
const seenIn = new Set<string>();

const CELLS = '[role="grid"]';
const SEEDS = 200;
/** After this long a second tap is no double tap. */
export const NO_DOUBLE_TAP_MS = 400;

export interface FoundWall {
  readonly code: string;
  readonly findings: readonly Finding[];
  readonly next: string;
}

/** The first wall of a brief, by its number, with the findings a test needs: a later engine lays others. */
export function firstWall(
  brief: Omit<Brief, 'seed'>,
  fits: (findings: readonly Finding[]) => boolean,
): FoundWall {
  for (let seed = 0; seed < SEEDS; seed++) {
    const findings = inspect(layWall({ ...brief, seed }), brief.rules);
    if (fits(findings)) {
      return { code: codeOf({ ...brief, seed }), findings, next: codeOf({ ...brief, seed: seed + 1 }) };
    }
  }
  throw new RangeError(`none of ${SEEDS} walls fits`);
}

/**
 * Nothing wrong for those who cannot see it, nothing to scroll sideways, and no text too pale in any theme. The cells of the wall
 * are left out: there are hundreds, always the same, and axe takes long over them; one test looks at them.
 */
export async function lookAt(page: Page, state: string, { width, colours }: Look): Promise<void> {
  expect(await accessibilityProblems(page, CELLS), state).toEqual([]);
  expect(await sidewaysOverflow(page), state).toBe(0);
  const { testPath } = expect.getState();
  seenIn.add(`${testPath} ${state} ${colours}`);
  if (SHOTS) await page.screenshot({ path: join(SHOTS, `${state}-${width}-${colours}.png`), fullPage: true });
  for (const theme of THEMES) {
    const seen = `${testPath} ${state} ${theme}`;
    if (seenIn.has(seen)) continue;
    seenIn.add(seen);
    expect(await paleTexts(page, theme), `${state}, ${theme}`).toEqual([]);
    if (SHOTS) await page.screenshot({ path: join(SHOTS, `${state}-${width}-${theme}.png`), fullPage: true });
  }
  await page.evaluate(() => delete document.documentElement.dataset.theme);
}

/** Puts the page into a theme, which changes nothing but colours; then the texts too pale to be read. */
async function paleTexts(page: Page, theme: Theme): Promise<readonly string[]> {
  await page.evaluate((chosen) => {
    document.documentElement.dataset.theme = chosen;
  }, theme);
  return accessibilityProblems(page, CELLS, ['color-contrast']);
}

/** Until the page answers: what the server drew and wrote stands there before. */
export async function awake(page: Page): Promise<void> {
  await page.locator('[data-measured="true"]').first().waitFor();
}

/** Steps back until all of the wall is in sight. */
export async function seeWhole(page: Page): Promise<void> {
  await awake(page);
  const whole = page.getByRole('button', { name: 'Whole wall' });
  if (await whole.isEnabled()) await whole.click();
}

/** Picks a part of the wall with the pointer. */
export async function pick(page: Page, part: string): Promise<void> {
  await page.locator(`[data-part="${part}"]`).click();
}

/** Picks a part with a finger until something shows: a first tap may only bring the wall closer. */
export async function touch(
  page: Page,
  part: string | Locator,
  shown: Locator = page.locator('#picked-name'),
): Promise<void> {
  const aim = typeof part === 'string' ? page.locator(`[data-part="${part}"]`) : part;
  const frames = () =>
    page
      .locator('svg[role="presentation"]')
      .evaluateAll((all) => all.map((svg) => svg.getAttribute('viewBox')));
  for (let tap = 0; tap < 2 && !(await shown.isVisible()); tap++) {
    const before = JSON.stringify(await frames());
    await aim.tap();
    await page.waitForTimeout(NO_DOUBLE_TAP_MS);
    await expect
      .poll(async () => (await shown.isVisible()) || JSON.stringify(await frames()) !== before)
      .toBe(true);
  }
  await shown.waitFor();
}

/** Holds the likeliest instrument for a fault to the part picked, and notes what it reads. */
export async function measure(page: Page, check: CheckId): Promise<void> {
  await page.getByText('Measure here').click();
  await page.getByRole('combobox', { name: 'Instrument' }).selectOption(toleranceOf(check).instrument);
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByText('Measure here').click();
}

/** Names the fault at the part picked, and marks it. */
export async function mark(page: Page, fault: string, sure: string): Promise<void> {
  // The list folds away under the press, so there is nothing left to be checked.
  await page.getByRole('radio', { name: fault, exact: true }).click();
  await page.getByRole('radio', { name: sure, exact: true }).check();
  await page.getByRole('button', { name: 'Mark it' }).click();
}
