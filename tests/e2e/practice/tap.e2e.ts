import type { Browser, Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { tapAt } from '../../../components/wall/gestures/tap';
import { mmPerPixel, sheetPoint } from '../../../components/wall/to-screen';
import { layByCode } from '../../../lib/engines/engines';
import { parseCode } from '../../../lib/generate/wall-code';
import { CATALOGUE } from '../../../lib/inspect/catalogue';
import type { Finding } from '../../../lib/inspect/finding';
import { inspect } from '../../../lib/inspect/inspect';
import { drawingOf } from '../../../lib/views/draw-view';
import { partName } from '../../../lib/wall/part-names';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
import { LOOKS, openBrowser, visit } from '../browser';
import { awake, firstWall, lookAt, mark, NO_DOUBLE_TAP_MS } from './practice-steps';

/** A wall that the front page's first button led to: one open head joint, and readers who tapped dead on it scored nothing. */
const FIRST = '6NK-PWAG-FAH';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});

test.each(LOOKS)(
  'the first wall at $width px: seen, tapped beside, named, and every default taken',
  async (look) => {
    const { page, problems, close } = await visit(browser, `/walls/${FIRST}`, look);
    await page.locator('[data-ready="true"] [data-measured="true"]').waitFor();
    const brief = parseCode(FIRST);
    const { wall } = layByCode(brief);
    const parts = partsOf(surveyOf(wall));
    const drawing = drawingOf(
      surveyedWall(wall),
      { kind: 'front' },
      brief.rules === 'united-states' ? 'inches' : 'mm',
    );
    const [finding, ...others] = inspect(wall, brief.rules);
    if (finding === undefined || others.length > 0) throw new RangeError('the first wall has not one fault');
    const { region } = finding;
    const frame = drawing.frames.find(({ panel }) => panel === region.panel);
    if (frame === undefined) throw new RangeError('the fault is not seen from in front');
    const x = frame.x + frame.scale * (region.x + region.width / 2);
    const y = frame.y + frame.scale * (region.y + region.height / 2);
    const isTouch = look.width < 600;

    // A finger lands some way beside what it means; a pointer does not.
    for (let tap = 0; tap < 2 && !(await page.locator('#picked-name').isVisible()); tap++) {
      const { screen, seen } = await onScreen(page);
      const mmPerPx = mmPerPixel(seen, screen);
      const clientX =
        screen.left + screen.width / 2 + (x - seen.x - seen.width / 2) / mmPerPx + (isTouch ? 9 : 0);
      const clientY =
        screen.top + screen.height / 2 - (y - seen.y - seen.height / 2) / mmPerPx - (isTouch ? 7 : 0);
      if (isTouch) await page.touchscreen.tap(clientX, clientY);
      else await page.mouse.click(clientX, clientY);
      await page.waitForTimeout(NO_DOUBLE_TAP_MS);
      const [atX, atY] = sheetPoint(seen, screen, clientX, clientY);
      const at = { x: atX, y: atY, mmPerPx, courseHigh: wall.gauge };
      const meant = tapAt(drawing, parts, at, isTouch ? 'bare' : 'mouse');
      if (meant?.kind !== 'part') continue;
      const part = parts.get(meant.picked.part);
      expect(await page.locator('#picked-name').textContent()).toBe(part && partName(part, wall));
    }
    await page.getByRole('radio', { name: CATALOGUE[finding.check].name, exact: true }).click();
    await page.getByRole('button', { name: 'Mark it' }).click();
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await page.getByRole('button', { name: 'Hand in 1 mark' }).click();
    await page.getByText('100 of 100').waitFor();
    expect(problems).toEqual([]);
    await close();
  },
);

/** One joint too thick or too thin, and that a head: the beds under the units on both sides of it meet it with their ends. */
const head = firstWall(
  { topic: 'joints', kind: 'plain-panel', difficulty: 1, rules: 'canada' },
  (findings) =>
    findings.length === 1 &&
    /^(thick|thin)-joint$/.test(findings[0]?.check ?? '') &&
    headOf(findings) !== null,
);

/** Course and unit to the left of the head that the first finding names. */
function headOf([finding]: readonly Finding[]): { readonly course: string; readonly unit: string } | null {
  const [, course, unit] = /^A(\d+)\.(\d+)\/\d+$/.exec(finding?.parts[0] ?? '') ?? [];
  return course !== undefined && unit !== undefined ? { course, unit } : null;
}

test.each(LOOKS)(
  'a mark on the bed that meets the head at fault is told at $width px as one joint off',
  async (look) => {
    const [finding] = head.findings;
    const at = headOf(head.findings);
    if (finding === undefined || at === null) throw new RangeError('the wall has no such head');
    const { page, problems, close } = await visit(browser, `/walls/${head.code}`, look);
    await awake(page);
    await page.getByText('Lengths and list').click();
    await page.getByRole('radio', { name: 'Joints', exact: true }).check();
    await page.getByRole('radio', { name: 'a list' }).check();
    const row = page.getByRole('combobox', { name: 'Row' });
    const beds = row.locator('option', { hasText: new RegExp(`^Course ${at.course}: .*bed`) });
    await row.selectOption(await beds.getAttribute('value'));
    await page.getByRole('button', { name: new RegExp(`bed joint under unit ${at.unit}\\b`, 'i') }).click();
    await mark(page, CATALOGUE[finding.check].name, 'Certain');
    await page.getByRole('button', { name: 'Check once more, then hand in' }).click();
    await page.getByRole('button', { name: 'Hand in 1 mark' }).click();
    await page.getByText('50 of 100').waitFor();
    await page.getByText('One mark was in the right place, one joint off.').waitFor();
    await page
      .getByText(/^You marked it at the bed joint under unit .*: the right place, one joint off\.$/)
      .waitFor();
    expect(await page.getByText('False mark', { exact: true }).count()).toBe(0);
    await lookAt(page, 'one-joint-off', look);
    expect(problems).toEqual([]);
    await close();
  },
);

/** Where the drawing lies on the screen, brought into sight, and what part of the sheet it shows. */
async function onScreen(page: Page) {
  const svg = page.locator('[data-stage] svg[data-measured]');
  await svg.scrollIntoViewIfNeeded();
  return svg.evaluate((element) => {
    const { left, top, width, height } = element.getBoundingClientRect();
    const [x = 0, minusTop = 0, wide = 0, high = 0] = (element.getAttribute('viewBox') ?? '')
      .split(' ')
      .map(Number);
    // SVG counts down from the top, the sheet up from the foot.
    return {
      screen: { left, top, width, height },
      seen: { x, y: -minusTop - high, width: wide, height: high },
    };
  });
}
