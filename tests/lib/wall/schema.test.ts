import { describe, expect, test } from 'vitest';
import { layWall } from '../../../lib/generate/generate';
import type { Wall } from '../../../lib/wall/model';
import { fingerprintOf, printWall } from '../../../lib/wall/print';
import { parseWall, wallJsonSchema } from '../../../lib/wall/schema';

const wall = layWall({ topic: 'mixed', kind: 'window-panel', difficulty: 3, rules: 'canada', seed: 79 });

/** The wall with one thing changed, as loose data. */
function changed(change: (loose: Record<string, never>) => void): unknown {
  const loose = JSON.parse(printWall(wall));
  change(loose);
  return loose;
}

describe('reading a wall', () => {
  test('printed and read, it is the same wall to the letter', () => {
    expect(printWall(parseWall(JSON.parse(printWall(wall))))).toBe(printWall(wall));
  });

  test('the order of keys does not move the print or the fingerprint', () => {
    const turned = Object.fromEntries(Object.entries(wall).reverse()) as unknown as Wall;
    expect(printWall(turned)).toBe(printWall(wall));
    expect(fingerprintOf(turned)).toBe(fingerprintOf(wall));
    expect(fingerprintOf(wall)).toMatch(/^[0-9a-f]{16}$/);
  });

  test.each(['hairline', 'bloom', 'chip', 'flake', 'crumbling', 'smear', 'stain'])(
    'a unit that shows %s is read as it is',
    (condition) => {
      const loose = changed((each) => set(each, ['units', 3, 'condition'], condition));
      expect(parseWall(loose).units[3]?.condition).toBe(condition);
    },
  );

  test('the JSON Schema names the draft and the parts', () => {
    expect(JSON.stringify(wallJsonSchema())).toContain('https://json-schema.org/draft/2020-12/schema');
    expect(JSON.stringify(wallJsonSchema())).toContain('"units"');
  });

  test.each<[string, (loose: never) => void, string]>([
    ['a missing list', (loose) => Reflect.deleteProperty(loose, 'units'), 'units: '],
    ['a stranger key', (loose) => set(loose, ['faulty'], true), 'wall: '],
    ['text for a number', (loose) => set(loose, ['units', 3, 'x'], 'left'), 'units.3.x: '],
    ['a length off the grid', (loose) => set(loose, ['units', 3, 'x'], 1.3), 'units.3.x: is not on the grid'],
    ['no number at all', (loose) => set(loose, ['units', 3, 'y'], null), 'units.3.y: '],
    [
      'a unit of no length',
      (loose) => set(loose, ['units', 3, 'length'], 0),
      'units.3.length: is not over 0',
    ],
    ['a wall a mile long', (loose) => set(loose, ['panels', 0, 'length'], 1_600_000), 'panels.0.length: '],
    [
      'an unknown panel',
      (loose) => set(loose, ['ties', 0, 'panel'], 'Q'),
      'ties.0.panel: there is no panel Q',
    ],
    ['a unit outside', (loose) => set(loose, ['units', 0, 'x'], -500), 'units.0: lies outside panel A'],
    [
      'a name that is not its place',
      (loose) => set(loose, ['units', 0, 'course'], 2),
      'units.0.id: A1.1 does not name',
    ],
    [
      'one name twice',
      (loose) => set(loose, ['ties', 1, 'id'], wall.ties[0]?.id),
      `ties.1.id: ${wall.ties[0]?.id} is named twice`,
    ],
    ['units that overlap', (loose) => set(loose, ['units', 1, 'length'], 250), 'units: A1.2 overlaps A1.3'],
    [
      'a unit where a quoin stands through',
      (loose) => set(loose, ['units', 5, 'kind'], 'quoin'),
      'overlaps A1.6',
    ],
    ['a unit sunk in those below', (loose) => set(loose, ['units', 40, 'y'], 100), ' overlaps '],
    [
      'a joint of nobody',
      (loose) => set(loose, ['heads', 0, 'joint'], 'A99.1/2'),
      'heads.0.joint: there is no head joint A99.1/2',
    ],
    [
      'a lintel of no opening',
      (loose) => set(loose, ['supports', 1, 'opening'], 'A-window9'),
      'supports.1.opening: there is no opening',
    ],
    ['a course that is not laid', (loose) => set(loose, ['panels', 0, 'courses'], 90), 'has no unit'],
    ['a tie far off', (loose) => set(loose, ['ties', 0, 'x'], -5000), 'ties.0.x: lies outside panel A'],
    [
      'a panel of no length in plan',
      (loose) => set(loose, ['panels', 0, 'plan', 'rightX'], wall.panels[0]?.plan.leftX),
      'panels.0.plan: has no length',
    ],
    ['an opening laid over units', (loose) => set(loose, ['openings', 0, 'x'], 100), 'openings.0: unit A'],
    [
      'a condition that is not known',
      (loose) => set(loose, ['units', 3, 'condition'], 'mossy'),
      'units.3.condition: ',
    ],
    ['another version', (loose) => set(loose, ['version'], 1), 'version: '],
  ])('%s is refused with its place', (_, change, message) => {
    expect(() => parseWall(changed(change as never))).toThrow(message);
  });

  test.each([null, 7, 'wall', [], { units: 'x'.repeat(10_000_000) }])(
    'what is no wall is refused',
    (loose) => {
      expect(() => parseWall(loose)).toThrow(/: /);
    },
  );
});

function set(loose: object, path: readonly (string | number)[], value: unknown): void {
  const last = path[path.length - 1] ?? '';
  const owner = path.slice(0, -1).reduce((each: object, key) => Reflect.get(each, key), loose);
  Reflect.set(owner, last, value);
}
