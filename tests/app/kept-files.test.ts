import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { dropOld, keepFiles, kept } from '../../app/server/kept-files';
import { measuredWall } from '../../app/server/laid-walls';
import { sentWall } from '../../app/server/site-walls';
import { layByCode } from '../../lib/engines/engines';
import { parseBrief } from '../../lib/generate/brief';
import { codeOf } from '../../lib/generate/wall-code';
import { inspect } from '../../lib/inspect/inspect';
import { fingerprintOf, printWall } from '../../lib/wall/print';
import { parseLaid } from '../../lib/wall-page/read-laid';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'wall-kept-'));
  keepFiles(folder, 'build-1');
});
afterEach(() => {
  // Tests after these keep nothing.
  Reflect.deleteProperty(globalThis, 'readTheWallKeeping');
  rmSync(folder, { recursive: true, force: true });
});

const files = (build = 'build-1') =>
  readdirSync(join(folder, build)).map((name) => join(folder, build, name));
const [FIRST, SECOND] = [{ key: 'made first' }, { key: 'made second' }];
/** What comes back under a name that was kept as FIRST: that, or what is made now. */
const again = (name = 'wall') => kept(name, () => SECOND);
const onlyFile = () => files()[0] ?? '';

describe('a kept file is believed when this build wrote it under this name just so, and else made again', () => {
  beforeEach(() => {
    kept('wall', () => FIRST);
  });

  test('as it was written', () => {
    expect(again()).toEqual(FIRST);
    expect(again('another wall')).toEqual(SECOND);
  });

  test.each([
    ['a byte of its checksum is another', (bytes: Buffer) => bytes.fill((bytes[0] ?? 0) ^ 1, 0, 1)],
    [
      'a byte of what it holds is another',
      (bytes: Buffer) => bytes.fill((bytes.at(-9) ?? 0) ^ 1, bytes.length - 9, bytes.length - 8),
    ],
    ['its end is missing', (bytes: Buffer) => bytes.subarray(0, bytes.length - 1)],
    ['only its checksum is there', (bytes: Buffer) => bytes.subarray(0, 32)],
    ['it is empty', () => Buffer.alloc(0)],
    [
      'something else was packed under the old checksum',
      (bytes: Buffer) => Buffer.concat([bytes.subarray(0, 32), gzipSync('{"key":"forged"}')]),
    ],
  ])('%s', (_, spoil) => {
    writeFileSync(onlyFile(), spoil(readFileSync(onlyFile())));
    expect(again()).toEqual(SECOND);
    // And it is mended.
    expect(kept('wall', () => FIRST)).toEqual(SECOND);
  });

  test('it stands under the name of another', () => {
    const first = readFileSync(onlyFile());
    kept('another wall', () => SECOND);
    for (const file of files()) writeFileSync(file, first);
    expect(kept('another wall', () => SECOND)).toEqual(SECOND);
    expect(again()).toEqual(FIRST);
  });

  test('another build wrote it', () => {
    const first = readFileSync(onlyFile());
    const name = onlyFile().slice(join(folder, 'build-1').length);
    keepFiles(folder, 'build-2');
    expect(readdirSync(folder)).toEqual(['build-2']);
    writeFileSync(join(folder, 'build-2', name), first);
    expect(again()).toEqual(SECOND);
  });
});

test('nobody but this user reads a kept file', () => {
  kept('wall', () => FIRST);
  expect(statSync(onlyFile()).mode & 0o777).toBe(0o600);
  expect(statSync(join(folder, 'build-1')).mode & 0o777).toBe(0o700);
});

test('where nothing can be written, it is made each time', () => {
  rmSync(folder, { recursive: true });
  expect(kept('wall', () => FIRST)).toEqual(FIRST);
  expect(again()).toEqual(SECOND);
});

test('what was kept for more than 90 days goes', async () => {
  const now = Date.UTC(2026, 11, 1);
  for (const [name, days] of [
    ['old', 91],
    ['young', 89],
  ] as const) {
    const before = files();
    kept(name, () => FIRST);
    const at = new Date(now - days * 86_400_000);
    for (const file of files()) if (!before.includes(file)) utimesSync(file, at, at);
  }
  await dropOld(now);
  expect(kept('young', () => SECOND)).toEqual(FIRST);
  expect(kept('old', () => SECOND)).toEqual(SECOND);
  // And of two with room for one the older.
  await dropOld(now, 1);
  expect(kept('young', () => FIRST)).toEqual(FIRST);
  expect(kept('old', () => FIRST)).toEqual(SECOND);
});

describe('a wall that was kept', () => {
  const briefs = (['plain-panel', 'window-panel', 'gable-end', 'door-corner'] as const).flatMap((kind) =>
    [1, 2, 3].map((seed) => parseBrief({ topic: 'mixed', kind, difficulty: 3, rules: 'canada', seed })),
  );

  test('has the findings that inspection measures on it, and its fingerprint', () => {
    for (const brief of briefs) measuredWall(brief, 'canada');
    expect(files()).toHaveLength(briefs.length);
    for (const brief of briefs) {
      const { wall, asLaid } = layByCode(brief);
      const found = measuredWall(brief, 'canada');
      expect(found.findings).toEqual(inspect(wall, 'canada'));
      expect(inspect(found.wall, 'canada')).toEqual(found.findings);
      expect(found.fingerprint).toBe(fingerprintOf(asLaid));
      // As text: JSON knows one zero, a wall may have two.
      expect(printWall(found.wall)).toBe(printWall(wall));
    }
  });

  test('is sent the second time as it was sent the first', () => {
    const [brief] = briefs;
    const code = brief ? codeOf(brief) : '';
    for (const offline of [true, false]) {
      const [first, second] = [sentWall(code, offline), sentWall(code, offline)];
      expect(second).toEqual(first);
      expect(parseLaid(gunzipSync(second ?? '').toString()).look === undefined).toBe(offline);
    }
  });
});
