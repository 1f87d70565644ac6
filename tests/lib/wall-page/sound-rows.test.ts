import { expect, test } from 'vitest';
import type { Finding } from '../../../lib/inspect/finding';
import { lookAlikesOn } from '../../../lib/inspect/recognise';
import { surveyOf } from '../../../lib/wall/survey';
import { surveyedWall } from '../../../lib/wall/surveyed';
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
  const kinds = (wall: typeof plain) =>
    lookAlikesOn(surveyedWall(wall), []).map(({ lookAlike, part }) => [lookAlike, part]);
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

test('on a panel whose raked joints are a fault, raked joints are not said to be right; nor an overhang where it is too far', () => {
  const plain = handWall();
  const surveyed = surveyedWall({
    ...plain,
    panels: plain.panels.map((panel) => ({ ...panel, profile: 'raked' as const })),
    supports: plain.supports.map((support) => ({ ...support, front: -11 })),
  });
  const kinds = (findings: readonly Finding[]) =>
    lookAlikesOn(surveyed, findings).map(({ lookAlike }) => lookAlike);
  expect(kinds([])).toEqual(expect.arrayContaining(['raked-on-thick-veneer', 'overhang-within-a-third']));
  const at = (check: Finding['check'], panel: string): Finding => ({
    check,
    parts: ['B1.1'],
    region: { panel, x: 0, y: 0, width: 1, height: 1 },
    ...{ measured: 2, unit: 'mm', limit: 1, margin: -1, kind: 'good practice', hazard: 'looks' },
    source: { limit: '', rules: 'canada', title: '', edition: '', clause: '', howSure: 'common practice' },
  });
  expect(kinds([at('raked-thin-veneer', 'A')])).not.toContain('raked-on-thick-veneer');
  expect(kinds([at('raked-thin-veneer', 'B')])).toContain('raked-on-thick-veneer');
  expect(kinds([at('overhang-too-far', 'A')])).not.toContain('overhang-within-a-third');
});
