import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import jpeg from 'jpeg-js';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const BUNDLED = join(ROOT, 'node_modules', '.cache', 'photo-command.mjs');
const BRICK = 'tests/lib/photo/brick.png';
/** Texture (20, 290) to (1150, 1660) of the published mapping; top left of the wall first, which the picture shows at its right. */
const POINTS = '433.89,5.93 504.79,421.87 3.30,419.86 57.62,4.42';
const WHOLE = [BRICK, '--points', POINTS, '--size', '1130x1370'];

function photo(...args) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [BUNDLED, ...args], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
}

describe('the photo command', () => {
  let folder = '';
  beforeAll(async () => {
    await build({
      entryPoints: [join(ROOT, 'app', 'commands', 'photo.ts')],
      outfile: BUNDLED,
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      logLevel: 'error',
    });
    folder = mkdtempSync(join(tmpdir(), 'photos-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('prints every quantity of the real photograph', () => {
    const { status, stdout, stderr } = photo(...WHOLE, '--unit', '278x94', '--rules', 'canada', '--json');
    expect([status, stderr]).toEqual([0, '']);
    const { quantities, ...rest } = JSON.parse(stdout);
    expect(rest).toMatchObject({ width: 512, height: 512, rules: 'canada' });
    for (const each of Object.values(quantities)) {
      expect(Object.keys(each)).toEqual(
        expect.arrayContaining(['value', 'sd', 'unit', 'n', 'verdict', 'limit']),
      );
      expect(['within', 'beyond', 'cannot tell']).toContain(each.verdict);
    }
    expect(Math.abs(quantities.gauge.value - 107.97)).toBeLessThan(0.8);
    expect(quantities['bed-joint'].limit).toMatchObject({
      least: 5,
      most: 15,
      clause: '9.20.4.1.(1) and (2)',
    });
  });

  test('reads a JPEG that a phone took on its side, and a size in feet', () => {
    const { width, height, data } = PNG.sync.read(readFileSync(join(ROOT, BRICK)));
    const { data: bytes } = jpeg.encode({ width, height, data }, 95);
    const exif = Buffer.from(
      'Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x08\0\0\0\0\0\0\0',
      'latin1',
    );
    const marker = Buffer.from([0xff, 0xe1, 0, exif.length + 2]);
    const file = join(folder, 'on-side.jpg');
    writeFileSync(file, Buffer.concat([bytes.subarray(0, 2), marker, exif, bytes.subarray(2)]));
    // Turned to stand, the picture's (x, y) lie at (y, 512 − x).
    const turned = POINTS.split(' ')
      .map((point) => point.split(',').map(Number))
      .map(([x, y]) => `${y},${512 - x}`);
    const { status, stdout } = photo(
      file,
      '--points',
      turned.join(' '),
      '--size',
      '1130 mm x 4 ft 5 15/16 in',
      '--json',
    );
    expect(status).toBe(0);
    expect(Math.abs(JSON.parse(stdout).quantities.gauge.value - 107.97)).toBeLessThan(1);
  });

  test('without --json, a line for each quantity, and --help the options', () => {
    expect(photo(...WHOLE).stdout).toMatch(/^gauge: 10[78]\.\d ± \d\.\d mm \(12\)/);
    expect(photo('--help')).toMatchObject({
      status: 0,
      stdout: expect.stringMatching(/^Usage: npm run -s photo/),
    });
  });

  test.each([
    [[], /^name one file, not 0/],
    [[BRICK], /^--points is missing/],
    [[BRICK, '--points', POINTS], /^--size is missing/],
    [[...WHOLE, '--colour', 'red'], /^Unknown option '--colour'/],
    [[...WHOLE, 'second.png'], /^name one file, not 2/],
    [[...WHOLE, '--rules', 'mars'], /^--rules: "mars" is not one of canada, /],
    [[...WHOLE, '--size', '1130'], /^--size: two lengths over 0/],
    [[...WHOLE, '--size', '0x1370'], /^--size: two lengths over 0/],
    [[...WHOLE, '--size', 'x'.repeat(1e5)], /^--size: two lengths over 0/],
    [[...WHOLE, '--unit', '215x-65'], /^--unit: two lengths over 0/],
    [[...WHOLE, '--points', '1,2 3,4'], /^--points: four points are needed/],
    [[...WHOLE, '--points', '1,2 3,4 5,6 7;8'], /^--points: "7;8" is not a point/],
    [[...WHOLE, '--points', ' '.repeat(1e5)], /^--points: four points are needed/],
    [
      [...WHOLE, '--points', '0,0 600,0 500,500 0,500'],
      /^--points: 600,0 lies outside the picture of 512 by 512/,
    ],
    [[...WHOLE, '--points', '0,0 100,0 200,0 0,200'], /^the corners: three of the four points/],
    [['no-such.png', ...WHOLE.slice(1)], /^the file "no-such\.png" cannot be read/],
    [['package.json', ...WHOLE.slice(1)], /^the file "package\.json" is neither a PNG nor a JPEG/],
    [[...WHOLE.slice(0, 1), '--points', '0,0 100,0 100,90 0,90', '--size', '90000x80000'], /^the picture: /],
  ])('%j: one sentence, exit 2', (args, message) => {
    const { status, stdout, stderr } = photo(...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(message);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });

  test('a broken picture and one that says it is huge are refused', () => {
    const png = readFileSync(join(ROOT, BRICK));
    const broken = join(folder, 'broken.png');
    writeFileSync(broken, png.subarray(0, 5000));
    expect(photo(broken, ...WHOLE.slice(1))).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/is broken/),
    });
    const huge = join(folder, 'huge.png');
    const copy = Buffer.from(png);
    copy.writeUInt32BE(200_000, 16);
    writeFileSync(huge, copy);
    expect(photo(huge, ...WHOLE.slice(1))).toMatchObject({
      status: 2,
      stderr: expect.stringMatching(/more than 60 million/),
    });
  });
});
