import { expect, test } from 'vitest';
import { TOPICS } from '../../../lib/generate/topics';
import { hiddenFromFront } from '../../../lib/wall-page/hidden-from-front';
import { viewChoices } from '../../../lib/wall-page/view-choices';
import { liftingPlan, whatShows } from '../../../lib/wall-page/what-shows';
import { HAND_BATCHES, handWall, handWindow } from '../views/hand-wall';

test.each(['mortar', 'back-mortar', 'ties', 'support', 'water'] as const)(
  'a wall about %s says where to look first while it is easy, and no longer',
  (topic) => {
    expect(hiddenFromFront(topic, 1)).toMatch(/“.+”/);
    expect(hiddenFromFront(topic, 2)).toBe(hiddenFromFront(topic, 1));
    expect(hiddenFromFront(topic, 3)).toBeNull();
  },
);

test('what shows in front needs no word', () => {
  const told = TOPICS.filter((topic) => hiddenFromFront(topic, 1) !== null);
  expect(told.sort()).toEqual(['back-mortar', 'mortar', 'support', 'ties', 'water']);
});

test('every look says what it shows, and no two the same', () => {
  const wall = { ...handWindow(), batches: HAND_BATCHES };
  const looks = new Map(viewChoices(wall).map(({ look, value }) => [look, whatShows(value, wall)]));
  expect([...looks.values()].filter((words) => words.length < 20)).toEqual([]);
  expect(new Set(looks.values()).size).toBe(looks.size);
});

test('only on a stuck-on wall is it worth sounding first', () => {
  expect(liftingPlan(handWall({ masonry: 'adhered' }))).toMatch(/^Sound the wall first/);
  expect(liftingPlan(handWall())).not.toContain('rings hollow');
});
