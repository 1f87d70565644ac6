import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** As `npm run wall` starts it: most of a call is the loader reading the code anew. */
const BY_TSX = [join(ROOT, 'node_modules', 'tsx', 'dist', 'cli.mjs'), 'app/commands/wall.ts'];
/** The same program in one file, for all calls but the first. */
const BUNDLED = [join(ROOT, 'node_modules', '.cache', 'wall-command.mjs')];

function wall(...args) {
  return run(BUNDLED, args);
}

function run(program, args) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...program, ...args], {
    cwd: ROOT,
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, stdout, stderr };
}

describe('the wall command', () => {
  let folder = '';
  beforeAll(async () => {
    await build({
      entryPoints: [join(ROOT, 'app', 'commands', 'wall.ts')],
      outfile: BUNDLED[0],
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      logLevel: 'error',
    });
    folder = mkdtempSync(join(tmpdir(), 'marks-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('prints the wall, its code, its fingerprint and its key; the code lays it again', () => {
    const args = [
      '--topic',
      'ties',
      '--kind',
      'gable-end',
      '--difficulty',
      '3',
      '--rules',
      'canada',
      '--seed',
      '42',
      '--json',
    ];
    const first = run(BY_TSX, args);
    expect([first.status, first.stderr]).toEqual([0, '']);
    const printed = JSON.parse(first.stdout);
    expect(Object.keys(printed)).toEqual(['code', 'brief', 'fingerprint', 'wall', 'findings']);
    expect(printed.brief).toEqual({
      topic: 'ties',
      kind: 'gable-end',
      difficulty: 3,
      rules: 'canada',
      seed: 42,
    });
    expect(wall('--code', printed.code, '--json').stdout).toBe(first.stdout);
    for (const finding of printed.findings) {
      expect(Object.keys(finding)).toEqual(
        expect.arrayContaining([
          'check',
          'parts',
          'region',
          'measured',
          'unit',
          'limit',
          'margin',
          'kind',
          'hazard',
          'source',
        ]),
      );
      expect(finding.margin).toBeLessThan(0);
    }
  });

  test.each(['front', 'section', 'behind', 'before-cover'])('prints the drawing %s', (view) => {
    const { status, stdout } = wall(
      '--topic',
      view === 'behind' ? 'back-mortar' : 'support',
      '--kind',
      'window-panel',
      '--svg',
      view,
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/^<svg [\s\S]+<\/svg>\n$/);
  });

  describe('lets something work on the wall', () => {
    const asked = ['--topic', 'ties', '--kind', 'window-panel', '--seed', '4', '--mechanism'];

    test('and prints its state, margins, who comes next and the causes it allows', () => {
      const { status, stdout } = wall(
        ...asked,
        'lintel-sags',
        '--years',
        '15',
        '--season',
        'winter',
        '--json',
      );
      expect(status).toBe(0);
      const printed = JSON.parse(stdout);
      expect(Object.keys(printed)).toEqual(
        expect.arrayContaining(['wall', 'findings', 'state', 'lost', 'margins', 'next', 'causes']),
      );
      expect([printed.state.years, printed.state.season]).toEqual([15, 'winter']);
      expect(printed.margins).toHaveLength(printed.wall.units.length);
      expect(printed.next.flatMap(({ parts }) => parts)).toHaveLength(printed.wall.units.length);
      expect(printed.causes.filter(({ inK }) => inK).map(({ cause }) => cause)).toEqual(['lintel-sags']);
      const [crack] = printed.state.cracks;
      expect([crack.repair.category, crack.steps.length > 3]).toEqual([3, true]);
    });

    test('again and again after each loss', () => {
      const { stdout } = wall(...asked, 'frost', '--json', '--let-go', '3');
      const printed = JSON.parse(stdout);
      expect(printed.lost).toHaveLength(3);
      expect(Object.keys(printed.state.missing)).toEqual(printed.lost.map(({ part }) => part));
      expect(printed.margins).toHaveLength(printed.wall.units.length - 3);
    });

    test('says in two lines what comes next and what is allowed', () => {
      expect(wall(...asked, 'hogging').stdout).toMatch(/^next: .+\nallowed: hogging\n$/);
    });

    test('draws it from the front', () => {
      const { status, stdout } = wall(...asked, 'lintel-sags', '--svg', 'front');
      expect([status, stdout === wall(...asked, 'frost', '--svg', 'front').stdout]).toEqual([0, false]);
      expect(stdout).toMatch(/^<svg [\s\S]+<\/svg>\n$/);
    });

    test('lists all there are', () => {
      const lines = wall('--mechanism', 'help').stdout.trimEnd().split('\n');
      expect(lines).toHaveLength(21);
      expect(lines[0]).toMatch(/^corner-settlement +the ground gives/);
    });

    test.each([
      [['--mechanism', 'witchcraft'], 'mechanism: "witchcraft" is not one of corner-settlement, '],
      [['--mechanism', 'frost', '--years', '-1'], '--years'],
      [['--mechanism', 'frost', '--years', '201'], '--years: "201" is not a whole number from 0 to 200'],
      [
        ['--mechanism', 'frost', '--season', 'monsoon'],
        '--season: "monsoon" is not one of spring, summer, autumn, winter',
      ],
      [['--mechanism', 'frost', '--let-go', '9999'], '--let-go: "9999" is not a whole number from 0 to '],
      [['--mechanism', 'frost', '--svg', 'section'], '--svg: "section": '],
      [['--years', '5'], '--years: goes with --mechanism'],
      [
        ['--kind', 'plain-panel', '--mechanism', 'lintel-sags'],
        'mechanism: lintel-sags needs a wall with a lintel',
      ],
    ])('refuses %j in one sentence', (args, said) => {
      const { status, stdout, stderr } = wall(...args);
      expect([status, stdout]).toEqual([2, '']);
      expect(stderr).toContain(said);
      expect(stderr.trimEnd().split('\n')).toHaveLength(1);
    });
  });

  test('grades the marks of a file', () => {
    const file = join(folder, 'marks.json');
    writeFileSync(file, '{"marks":[]}');
    const { status, stdout } = wall('--topic', 'joints', '--marks', file);
    expect(status).toBe(0);
    expect(Object.keys(JSON.parse(stdout))).toEqual([
      'score',
      'capped',
      'findings',
      'marks',
      'parts',
      'answered',
    ]);
  });

  test('inspects the wall of a file, and refuses one that cannot stand', () => {
    const file = join(folder, 'wall.json');
    const laid = JSON.parse(wall('--topic', 'support', '--kind', 'window-panel', '--json').stdout);
    writeFileSync(file, JSON.stringify(laid.wall));
    const read = JSON.parse(wall('--wall', file, '--rules', 'canada').stdout);
    expect(read).toEqual({ fingerprint: laid.fingerprint, findings: laid.findings });
    writeFileSync(file, JSON.stringify({ ...laid.wall, gauge: -1 }));
    expect(wall('--wall', file)).toEqual({ status: 2, stdout: '', stderr: 'gauge: is not over 0\n' });
  });

  test.each([
    [['--colour', 'red'], /^Unknown option '--colour'.*\n$/],
    [['--topic', 'roofs'], /^topic: "roofs" is not one of .*\n$/],
    [['--difficulty', '9'], /^difficulty: "9" is not a whole number from 1 to 5\n$/],
    [['--seed', '-4'], /.*\n$/],
    [['--code', '3K7-Q2WF-9T2'], /^wall code "3K7-Q2WF-9T2": mistyped.*\n$/],
    [['--marks', '/no/such/file'], /^the file "\/no\/such\/file" cannot be read\n$/],
    [['--svg', 'roof'], /.*roof.*\n$/],
    [['ties'], /.*\n$/],
  ])('%j: one sentence, exit 2', (args, message) => {
    const { status, stdout, stderr } = wall(...args);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(message);
    expect(stderr.trimEnd().split('\n')).toHaveLength(1);
  });

  test('a code and a part of a brief are not given together', () => {
    const { status, stdout, stderr } = wall('--code', '3K7-Q2WF-9TB', '--seed', '1');
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: '',
      stderr: '--code and --seed: a code holds the whole brief, give one of the two\n',
    });
  });

  test('what cannot be read is told in one line, without signs that turn letters round', () => {
    const { status, stderr } = wall('--code', 'AB\nC\u202eD');
    expect([status, stderr]).toEqual([2, expect.stringMatching(/^wall code "AB C D": [^\n\u202e]+\n$/)]);
  });
});
