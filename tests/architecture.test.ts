import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesUnder, importsOf, isScript, topLevelEntries } from './source-files';

const MOST_LINES = 250;
const MOST_FILES = 25;

interface Room {
  /** As the map names it: lib/wall, lib/units.ts, components. */
  readonly name: string;
  /** Rooms, and files of a room without their ending, that it may enter. */
  readonly enters: readonly string[];
  /** Those of which it may take types alone. */
  readonly types: readonly string[];
  readonly packages: readonly string[] | 'all';
}

/** The table of DEVELOPERS.md: the one place that says who may enter which room. */
function roomsOfTheMap(): readonly Room[] {
  const rooms: Room[] = [];
  for (const line of readFileSync('DEVELOPERS.md', 'utf8').split('\n')) {
    const [, room = '', , enters = '', packages = ''] = line.split('|').map((cell) => cell.trim());
    if (!/^`(lib\/|components`|app`)/.test(room)) continue;
    const above = rooms.map(({ name }) => name);
    rooms.push({
      name: room.replaceAll('`', ''),
      enters: placesIn(enters, above),
      types: enters
        .split(', ')
        .flatMap((place) => (place.endsWith(' (types)') ? placesIn(place, above) : [])),
      packages: packages.startsWith('all') ? 'all' : packages.split(', ').filter((name) => name !== ''),
    });
  }
  return rooms;
}

function placesIn(cell: string, above: readonly string[]): readonly string[] {
  return cell.split(', ').flatMap((words) => {
    const place = words.replace(' (types)', '');
    if (place === 'all above') return above;
    if (place === 'down to wall') return above.slice(0, above.indexOf('lib/wall') + 1);
    if (place === '' || place === 'package.json') return place === '' ? [] : [place];
    return [`lib/${place}`];
  });
}

const ROOMS = roomsOfTheMap();

/** What only tests and tools use: no page needs it. */
const DEV_ONLY: readonly string[] = Object.keys(
  JSON.parse(readFileSync('package.json', 'utf8')).devDependencies,
);

/** lib/inspect/checks/a.ts is of room lib/inspect, lib/units.ts a room by itself, components/x of components. */
function roomNameOf(path: string): string {
  const [top = '', next = ''] = path.split('/');
  return top === 'lib' ? `lib/${next}` : top;
}

function roomOf(path: string): Room | undefined {
  return ROOMS.find(({ name }) => name === roomNameOf(path));
}

function isOfPackage(from: string, name: string): boolean {
  return from === name || from.startsWith(`${name}/`);
}

/** Why an import is not allowed, or undefined when it is. */
function objection(path: string, from: string, typeOnly: boolean): string | undefined {
  const room = roomOf(path);
  if (!room) return `${path}: no row of DEVELOPERS.md names its room`;
  const { name, enters, types, packages } = room;
  if (!from.startsWith('.')) {
    const isAllowed =
      packages === 'all'
        ? !DEV_ONLY.some((each) => isOfPackage(from, each))
        : packages.some((each) => isOfPackage(from, each));
    return isAllowed ? undefined : `${path}: ${name} takes nothing from the package ${from}`;
  }
  const target = posix.join(posix.dirname(path), from);
  const targetRoom = target === 'lib/units' ? 'lib/units.ts' : roomNameOf(target);
  if (targetRoom === name || targetRoom === 'lib/units.ts') return undefined;
  const isAllowed = [targetRoom, target].some(
    (place) => enters.includes(place) && (typeOnly || !types.includes(place)),
  );
  return isAllowed ? undefined : `${path}: ${name} may not enter ${target}`;
}

const house = ['lib', 'components', 'app'].flatMap((folder) => filesUnder(folder));
const houseFiles = house.filter(isScript);

describe('who may enter which room', () => {
  test('the map names every room, and no other', () => {
    const rooms = new Set(houseFiles.map(({ path }) => roomNameOf(path)));
    expect(ROOMS.map(({ name }) => name).sort()).toEqual([...rooms].sort());
  });

  test('a room enters only rooms that stand above it in the map', () => {
    const names = ROOMS.map(({ name }) => name);
    const upwards = ROOMS.flatMap(({ name, enters }, row) =>
      enters
        .filter((place) => place !== 'package.json' && !names.slice(0, row).includes(roomNameOf(place)))
        .map((place) => `${name} -> ${place}`),
    );
    expect(upwards).toEqual([]);
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
  expect([...reached].filter((path) => roomNameOf(path) === 'lib/engines')).toEqual([]);
});

describe('no circle, of types neither', () => {
  const files = house.filter((file) => isScript(file) || file.path.endsWith('.css'));
  const paths = new Set(files.map(({ path }) => path));
  const arrows = files.filter(isScript).flatMap(({ path, text }) =>
    importsOf(text).flatMap(({ from }) => {
      const target = posix.join(posix.dirname(path), from);
      const found = from.startsWith('.')
        ? ['', '.ts', '.tsx'].map((ending) => target + ending).find((each) => paths.has(each))
        : undefined;
      return found === undefined ? [] : [[path, found] as const];
    }),
  );

  test('of files', () => {
    expect(circlesOf(arrows)).toEqual([]);
  });

  test('of the folders in components and app', () => {
    const folderOf = (path: string) => path.split('/').slice(0, -1).slice(0, 2).join('/');
    const circles = circlesOf(arrows.map(([from, to]) => [folderOf(from), folderOf(to)] as const));
    expect(circles).toEqual([]);
  });

  test('a circle is found, and what leads into it is no part of it', () => {
    expect(
      circlesOf([
        ['a', 'b'],
        ['b', 'c'],
        ['c', 'b'],
        ['c', 'd'],
        ['d', 'd'],
      ]),
    ).toEqual(['b', 'c']);
  });
});

/** Whatever imports itself by way of something else. */
function circlesOf(arrows: readonly (readonly [from: string, to: string])[]): readonly string[] {
  const next = new Map<string, Set<string>>();
  for (const [from, to] of arrows) {
    if (from !== to) next.set(from, (next.get(from) ?? new Set()).add(to));
  }
  return [...next.keys()].filter((start) => {
    const seen = new Set<string>();
    const toSee = [...(next.get(start) ?? [])];
    for (let each = toSee.pop(); each !== undefined; each = toSee.pop()) {
      if (each === start) return true;
      if (seen.has(each)) continue;
      seen.add(each);
      toSee.push(...(next.get(each) ?? []));
    }
    return false;
  });
}

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

  test(`no file of the house is longer than ${MOST_LINES} lines`, () => {
    const long = houseFiles.filter(({ text }) => text.trimEnd().split('\n').length > MOST_LINES);
    expect(long.map(({ path }) => path)).toEqual([]);
  });

  test(`no folder holds more than ${MOST_FILES} files`, () => {
    const files = new Map<string, number>();
    for (const { path } of filesUnder('.')) {
      files.set(posix.dirname(path), (files.get(posix.dirname(path)) ?? 0) + 1);
    }
    const full = [...files].filter(([, count]) => count > MOST_FILES);
    expect(full).toEqual([]);
  });
});
