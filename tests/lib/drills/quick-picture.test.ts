import { describe, expect, test } from 'vitest';
import { QUICK_LEVELS, QUICK_LOOKS } from '../../../lib/drills/quick/quick-look';
import { seenIn } from '../../../lib/drills/quick/quick-look-table';
import { type QuickPicture, quickPicture } from '../../../lib/drills/quick/quick-picture';
import { askOf, WALLS_A_ROUND } from '../../../lib/drills/quick/quick-round';
import { MAX_SEED } from '../../../lib/generate/brief';
import { inspect } from '../../../lib/inspect/inspect';
import { RULE_SETS } from '../../../lib/limits/limit';
import { drawingOf } from '../../../lib/views/draw-view';
import { croppedTo } from '../../../lib/views/front/cropped';
import { surveyedWall } from '../../../lib/wall/surveyed';

const PLACES = Array.from({ length: WALLS_A_ROUND }, (_, place) => place);
const SORTS = QUICK_LOOKS.flatMap((look) => QUICK_LEVELS.map((level) => ({ look, level })));

/** What can be pointed at in the picture. */
function shownParts({ wall, view, window }: QuickPicture): ReadonlySet<string> {
  const drawing = drawingOf(surveyedWall(wall), view, 'mm');
  return new Set((window ? croppedTo(drawing, window) : drawing).spots.map(({ part }) => part));
}

describe.each(SORTS)('a round of $look at level $level', (sort) => {
  test.each(RULE_SETS)(
    'by %s: every wall is measured to be as sound or as faulty as asked, and what is wrong shows',
    (rules) => {
      for (const place of PLACES) {
        const name = { ...sort, rules, round: 314 };
        const picture = quickPicture(name, place);
        const found = inspect(picture.wall, rules);
        const where = JSON.stringify(picture.brief);
        expect(found.length > 0, where).toBe(askOf(name, place, MAX_SEED).faulty);
        expect(
          found.map(({ check }) => check).filter((check) => !seenIn(sort).includes(check)),
          where,
        ).toEqual([]);
        if (found.length === 0) continue;
        const shown = shownParts(picture);
        const seen = found.some(
          ({ parts, region }) =>
            parts.some((part) => shown.has(part)) ||
            (!picture.window && picture.view.kind === 'front' && region.panel !== ''),
        );
        // Before cover an edge is not a part, but the whole backing is shown.
        expect(seen || picture.view.kind === 'before-cover', where).toBe(true);
      }
    },
  );
});

test('up close nothing beside the window can be seen or pointed at', () => {
  const picture = quickPicture({ look: 'close', level: 1, rules: 'canada', round: 5 }, 0);
  const { window } = picture;
  if (window === null) throw new RangeError('no window');
  const whole = drawingOf(surveyedWall(picture.wall), picture.view, 'mm');
  const seen = croppedTo(whole, window);
  expect([seen.box.width, seen.box.height]).toEqual([600, 400]);
  expect(seen.labels).toEqual([]);
  expect(seen.spots.length).toBeGreaterThan(10);
  expect(seen.spots.length).toBeLessThan(whole.spots.length / 2);
});

test('a faulty place up close and a sound one lie alike on their walls', () => {
  const middles = { faulty: [] as number[], sound: [] as number[] };
  for (let round = 0; round < 40; round++) {
    for (const place of [0, 1, 2]) {
      const { wall, window, findings } = quickPicture(
        { look: 'close', level: 1, rules: 'canada', round },
        place,
      );
      const panel = wall.panels.find(({ id }) => id === window?.panel);
      if (window === null || panel === undefined) throw new RangeError('no window');
      middles[findings.length > 0 ? 'faulty' : 'sound'].push((window.x + window.width / 2) / panel.length);
    }
  }
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  // Shares of a length, spread by about .25: with 50 and more of each their means lie within .2 of one another but once in a thousand.
  expect(Math.min(middles.faulty.length, middles.sound.length)).toBeGreaterThan(40);
  expect(Math.abs(mean(middles.faulty) - mean(middles.sound))).toBeLessThan(0.2);
});
