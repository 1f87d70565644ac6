import { expect, test } from 'vitest';
import { lookAlikesOn } from '../../../lib/inspect/recognise';
import { partsIn } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';
import { tightestOf } from '../../../lib/wall-page/sound-rows';
import { handWall } from '../views/hand-wall';

test('what came nearest to its limit is told with its measure, and lies within it', () => {
  const wall = handWall();
  const row = tightestOf(surveyOf(wall), 'canada', (id) => id);
  if (row === null) throw new RangeError('nothing was measured');
  const { value, limit, end } = row.within;
  expect(end === 'at most' ? value <= limit : value >= limit).toBe(true);
  // Nothing else that was measured came nearer than nine tenths of the way.
  expect(end === 'at most' ? value / limit : limit / value).toBeGreaterThan(0.5);
});

test('two chipped units are one look-alike, and a wall without any has none of them', () => {
  const plain = handWall();
  const kinds = (wall: typeof plain) => {
    const survey = surveyOf(wall);
    return lookAlikesOn(survey, partsIn(survey)).map(({ lookAlike, part }) => [lookAlike, part]);
  };
  const before = kinds(plain);
  expect(before.map(([kind]) => kind)).not.toContain('chipped-corners');
  const chipped = {
    ...plain,
    units: plain.units.map((unit) =>
      unit.course === 2 && unit.position <= 2 ? { ...unit, condition: 'chip' as const } : unit,
    ),
  };
  // Its bed looks too thick, and so does the bed beside it: one kind, once.
  expect(kinds(chipped).filter(([kind]) => kind === 'chipped-corners')).toHaveLength(1);
  expect(kinds(chipped)).toHaveLength(before.length + 1);
});
