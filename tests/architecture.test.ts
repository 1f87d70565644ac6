import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesUnder, importsOf, isScript, topLevelEntries } from './source-files';

const ROOMS_BELOW_WALL = ['units', 'geometry', 'limits', 'trade', 'wall'];

/**
 * Which room may enter which (DEVELOPERS.md has the picture). 'limits: types' lets only `import type` through. `a/b` is one file
 * of a room. A room may always use itself and the units. A room this table does not name has no rights and fails.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: [],
  limits: [],
  drawing: ['geometry'],
  trade: ['geometry'],
  wall: ['geometry', 'trade', 'limits: types'],
  // Names of the checks, so that a topic can say which faults it asks for. Nothing that runs: the key stays independent.
  generate: [...ROOMS_BELOW_WALL, 'inspect/finding: types'],
  engines: ['generate', 'wall', 'inspect/finding: types'],
  inspect: ROOMS_BELOW_WALL,
  // Names of the checks, to say how near a reading has to come.
  instruments: [...ROOMS_BELOW_WALL, 'inspect/finding: types'],
  views: [...ROOMS_BELOW_WALL, 'drawing'],
  questions: ['trade', 'limits'],
  marking: ['geometry', 'limits', 'inspect/finding'],
  drills: ['marking'],
  classes: [
    'marking',
    'generate/brief',
    'generate/topics',
    'generate/wall-code',
    'wall/model: types',
    'limits/limit',
  ],
  house: ['limits', 'trade'],
  store: ['classes', 'drills'],
  components: [
    ...ROOMS_BELOW_WALL,
    'inspect/finding',
    'instruments',
    'drawing',
    'views',
    'questions',
    'marking',
    'drills',
    'classes',
    'house',
  ],
  app: [
    ...ROOMS_BELOW_WALL,
    'generate',
    'engines',
    'inspect',
    'instruments',
    'drawing',
    'views',
    'questions',
    'marking',
    'drills',
    'classes',
    'house',
    'store',
    'components',
    // For the version that the health page tells.
    'package.json',
  ],
};

/** What each room may take from outside. The top folder's own setting files and the tests may use all that is installed. */
const PACKAGES: Readonly<Record<string, RegExp>> = {
  app: /^(?!vitest|@testing-library|fast-check|playwright)/,
  components: /^(react|react-dom|next|idb)(\/|$)/,
  wall: /^(zod|@noble\/hashes)(\/|$)/,
  classes: /^@noble\/hashes(\/|$)/,
  store: /^(zod|kysely|pg|better-sqlite3|node:(crypto|fs|path))(\/|$)/,
  generate: /^(pure-rand|@noble\/hashes)(\/|$)/,
  marking: /^(munkres|pure-rand)(\/|$)/,
};

/** 'lib/inspect/checks/a.ts' is of room 'inspect', lib/units.ts of 'units', components/x of 'components'. */
function roomOf(path: string): string {
  const [top = '', next = ''] = path.split('/');
  return top === 'lib' ? next.replace(/\.tsx?$/, '') : top;
}

function mayEnter(room: string, target: string, typeOnly: boolean): boolean {
  const targetRoom = roomOf(target);
  const file = target.replace(/^lib\//, '').replace(/\.tsx?$/, '');
  if (targetRoom === room || targetRoom === 'units') return true;
  const allowed = MAY_IMPORT[room] ?? [];
  return [targetRoom, file].some(
    (place) => allowed.includes(place) || (typeOnly && allowed.includes(`${place}: types`)),
  );
}

/** Why an import is not allowed, or undefined when it is. */
function objection(path: string, from: string, typeOnly: boolean): string | undefined {
  const room = roomOf(path);
  if (!from.startsWith('.')) {
    return PACKAGES[room]?.test(from) ? undefined : `${path}: ${room} takes nothing from the package ${from}`;
  }
  const target = posix.join(posix.dirname(path), from);
  return mayEnter(room, target, typeOnly) ? undefined : `${path}: ${room} may not enter ${target}`;
}

const houseFiles = ['lib', 'components', 'app'].flatMap((folder) =>
  topLevelEntries().includes(folder) ? filesUnder(folder).filter(isScript) : [],
);

describe('who may enter which room', () => {
  test('every room is named in the table', () => {
    const unknown = houseFiles.map(({ path }) => roomOf(path)).filter((room) => !(room in MAY_IMPORT));
    expect([...new Set(unknown)]).toEqual([]);
  });

  test('every import goes where the table allows', () => {
    const objections = houseFiles.flatMap(({ path, text }) =>
      importsOf(text).flatMap(({ from, typeOnly }) => objection(path, from, typeOnly) ?? []),
    );
    expect(objections).toEqual([]);
  });

  test.each([
    ['lib/inspect/checks/a.ts', '../../generate/set-out', false],
    ['lib/generate/a.ts', '../inspect/finding', false],
    ['lib/generate/a.ts', '../inspect/inspect', true],
    ['lib/wall/a.ts', '../limits/limit', false],
    ['lib/marking/a.ts', '../inspect/inspect', false],
    ['lib/classes/a.ts', '../generate/lay-wall', false],
    ['components/a.tsx', '../lib/generate/lay-wall', false],
    ['components/a.tsx', '../lib/store/record', true],
    ['components/a.tsx', '../app/walls/lay', false],
    ['lib/views/a.ts', '../../tests/setup', false],
    ['lib/cellar/a.ts', '../wall/model', true],
    ['lib/trade/a.ts', 'react', true],
    ['lib/limits/a.ts', 'zod', false],
    ['lib/generate/a.ts', '../engines/engines', false],
    ['lib/store/a.ts', 'node:child_process', false],
    ['lib/store/a.ts', '../inspect/inspect', false],
    ['lib/classes/a.ts', 'kysely', false],
  ])('%s may not import %s', (path, from, typeOnly) => {
    expect(objection(path, from, typeOnly)).toMatch(new RegExp(`^${path}: `));
  });

  test.each([
    ['lib/inspect/checks/a.ts', '../../wall/model', false],
    ['lib/wall/a.ts', '../limits/limit', true],
    ['lib/marking/a.ts', '../inspect/finding', true],
    ['lib/classes/a.ts', '../generate/brief', true],
    ['lib/limits/a.ts', '../units', false],
    ['components/a.tsx', '../lib/inspect/finding', true],
    ['app/walls/page.tsx', '../../components/a', false],
    ['lib/wall/schema.ts', 'zod', false],
    ['lib/store/a.ts', 'kysely', false],
    ['lib/store/a.ts', '../classes/attempt-state', false],
  ])('%s may import %s', (path, from, typeOnly) => {
    expect(objection(path, from, typeOnly)).toBe(undefined);
  });
});

test('no page fetches the earlier engines: a client component reaches none of their files', () => {
  const byPath = new Map(houseFiles.map((file) => [file.path.replace(/\.tsx?$/, ''), file]));
  const reached = new Set<string>();
  const reach = (path: string) => {
    const file = byPath.get(path.replace(/\.mjs$/, '')) ?? byPath.get(path);
    if (file === undefined || reached.has(file.path)) return;
    reached.add(file.path);
    for (const { from, typeOnly } of importsOf(file.text)) {
      if (from.startsWith('.') && !typeOnly) reach(posix.join(posix.dirname(file.path), from));
    }
  };
  for (const { path, text } of houseFiles)
    if (text.startsWith("'use client'")) reach(path.replace(/\.tsx?$/, ''));
  expect(reached.size).toBeGreaterThan(300);
  expect([...reached].filter((path) => roomOf(path) === 'engines')).toEqual([]);
});

describe('what lies where', () => {
  const OURS = ['DEVELOPERS.md', 'README.md', 'app', 'components', 'content', 'lib', 'package.json', 'tests'];
  const TOOLS = [
    '.ci',
    '.gitignore',
    '.npmrc',
    '.nvmrc',
    'biome.json',
    'instrumentation.ts',
    'next.config.ts',
    'package-lock.json',
    'proxy.ts',
    'tsconfig.json',
    'vitest.config.ts',
  ];

  test('the top folder holds the house and what tools insist on, nothing else', () => {
    expect([...topLevelEntries()].sort()).toEqual([...OURS, ...TOOLS].sort());
  });

  test('no file is named so that anything could be in it', () => {
    const vague = filesUnder('.').filter(({ path }) =>
      /(^|\/)(index|utils?|helpers?|misc|common|shared|types)\.(ts|tsx|mjs)$/.test(path),
    );
    expect(vague.map(({ path }) => path)).toEqual([]);
  });

  test('no file of the house is longer than 260 lines', () => {
    const long = houseFiles.filter(({ text }) => text.trimEnd().split('\n').length > 260);
    expect(long.map(({ path }) => path)).toEqual([]);
  });
});
