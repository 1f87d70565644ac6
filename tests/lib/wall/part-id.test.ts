import { describe, expect, test } from 'vitest';
import { layWall } from '../../../lib/generate/generate';
import {
  batchId,
  bedId,
  cornerId,
  courseId,
  courseOf,
  endId,
  headId,
  kindOf,
  ledgeId,
  lintelId,
  openingId,
  parsePartId,
  tieId,
  unitId,
  unitOf,
} from '../../../lib/wall/part-id';
import { partsOf } from '../../../lib/wall/parts';
import { surveyOf } from '../../../lib/wall/survey';

const UNIT = { panel: 'A', course: 12, position: 5 };

describe('the names of parts', () => {
  test.each([
    ['A', { kind: 'panel', panel: 'A' }],
    ['B12', { kind: 'course', panel: 'B', course: 12 }],
    ['A12.5', { kind: 'unit', ...UNIT }],
    ['A12.5-bed', { kind: 'bed', ...UNIT }],
    ['A12.5/6', { kind: 'head', ...UNIT, right: 6 }],
    ['A-tie12.5', { kind: 'tie', ...UNIT }],
    ['A-window1', { kind: 'opening', panel: 'A', what: 'window' }],
    ['B-door1', { kind: 'opening', panel: 'B', what: 'door' }],
    ['A-ledge', { kind: 'support', panel: 'A', what: 'ledge' }],
    ['A-ledge2', { kind: 'support', panel: 'A', what: 'ledge' }],
    ['A-lintel1', { kind: 'support', panel: 'A', what: 'lintel' }],
    ['A-left-end', { kind: 'edge', panel: 'A', end: 'left' }],
    ['B-right-end', { kind: 'edge', panel: 'B', end: 'right' }],
    ['A-B-corner', { kind: 'corner', panels: ['A', 'B'] }],
    ['batch-2', { kind: 'batch', number: 2 }],
  ])('%s is read', (id, name) => {
    expect(parsePartId(id)).toEqual(name);
  });

  test.each([
    '',
    'a12',
    'AB',
    'A0',
    'A012.5',
    'A12.',
    'A12.5-',
    'A12.5-bed2',
    'A12.5/',
    'A12.5/6-bed',
    'A-tie12',
    'A-gate1',
    'A-top-end',
    'A--corner',
    'batch-',
    'batch-0',
    'A12.5 ',
    'A12.5\n',
  ])('%j is the name of no part', (id) => {
    expect(parsePartId(id)).toBe(null);
  });

  test('they are spelt as they are read', () => {
    const unit = unitId('A', 12, 5);
    expect([courseId('A', 12), unit, bedId(unit), headId(unit, 6), tieId('A', 12, 5)]).toEqual([
      'A12',
      'A12.5',
      'A12.5-bed',
      'A12.5/6',
      'A-tie12.5',
    ]);
    expect([openingId('B', 'door'), ledgeId('A'), lintelId('A'), endId('A', 'left')]).toEqual([
      'B-door1',
      'A-ledge',
      'A-lintel1',
      'A-left-end',
    ]);
    expect([cornerId('A', 'B'), batchId(2)]).toEqual(['A-B-corner', 'batch-2']);
  });

  test('a unit and its joints are of that unit and its course; other parts are of none', () => {
    const own = ['A12.5', 'A12.5-bed', 'A12.5/6'];
    expect(own.map(unitOf)).toEqual(['A12.5', 'A12.5', 'A12.5']);
    expect(own.map(courseOf)).toEqual(['A12', 'A12', 'A12']);
    expect(['A12', 'A-tie12.5', 'batch-2', 'A'].flatMap((id) => [unitOf(id), courseOf(id)])).toEqual(
      Array.from({ length: 8 }, () => null),
    );
  });

  test.each(['plain-panel', 'window-panel', 'door-corner', 'gable-end'] as const)(
    'every part of a laid %s has the name of its kind, panel and course',
    (kind) => {
      const wall = layWall({ topic: 'mixed', kind, difficulty: 3, rules: 'canada', seed: 5 });
      const parts = [...partsOf(surveyOf(wall)).values()];
      expect(parts.filter((part) => kindOf(part.id) !== part.kind)).toEqual([]);
      const misplaced = parts.filter(({ id, panel, course }) => {
        const name = parsePartId(id);
        return (
          name && (('panel' in name && name.panel !== panel) || ('course' in name && name.course !== course))
        );
      });
      expect(misplaced).toEqual([]);
    },
  );
});
