import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chanceOf } from '../../lib/generate/chance';

/** A room that is mutated, the tests that must notice, and how many mutants of it are tried. */
interface MutatedRoom {
  readonly room: string;
  readonly folders: readonly string[];
  readonly project: 'node' | 'store';
  readonly tests: readonly string[];
  readonly count: number;
}

const ROOMS: readonly MutatedRoom[] = [
  {
    room: 'inspect',
    folders: ['lib/inspect/checks', 'lib/inspect'],
    project: 'node',
    tests: ['tests/laws/agreement.test.ts', 'tests/frozen', 'tests/lib/recognise', 'tests/lib/grading'],
    count: 35,
  },
  {
    room: 'limits',
    folders: ['lib/limits'],
    project: 'node',
    tests: ['tests/reference', 'tests/lib/limits', 'tests/lib/naive'],
    count: 30,
  },
  {
    room: 'marking',
    folders: ['lib/marking'],
    project: 'node',
    tests: ['tests/lib/marking', 'tests/reference/marking', 'tests/lib/grading'],
    count: 20,
  },
  {
    room: 'views',
    folders: ['lib/views', 'lib/drawing'],
    project: 'node',
    tests: ['tests/lib/views', 'tests/lib/drawing', 'tests/walls'],
    count: 25,
  },
  { room: 'store', folders: ['lib/store'], project: 'store', tests: ['tests/store'], count: 12 },
];

/** What a slip of the hand would do: each way in turn, at each place where it can be done. */
const SLIPS: readonly (readonly [pattern: RegExp, change: (found: string) => string])[] = [
  [/ <= /g, () => ' < '],
  [/ >= /g, () => ' > '],
  [/ < (?=[\w(])/g, () => ' <= '],
  [/ > (?=[\w(])/g, () => ' >= '],
  [/ === /g, () => ' !== '],
  [/ && /g, () => ' || '],
  [/ \+ /g, () => ' - '],
  [/ - /g, () => ' + '],
  [/ \* /g, () => ' / '],
  [/Math\.max/g, () => 'Math.min'],
  [/Math\.min/g, () => 'Math.max'],
  [/\btrue\b/g, () => 'false'],
  // A figure moved by one, or by one in a hundred.
  [/(?<=[ (,-])\d+(?=[,;) \]])/g, (found) => String(Number(found) + 1)],
  [/(?<=[ (,-])\d+\.\d+(?=[,;) \]])/g, (found) => String(Number(found) * 1.01)],
];

interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly was: string;
  readonly is: string;
  readonly text: string;
}

/** Every slip that can be made in a file; comments, imports and texts are left alone. */
function mutantsOf(file: string): readonly Mutant[] {
  const text = readFileSync(file, 'utf8');
  let at = 0;
  return text.split('\n').flatMap((line, index) => {
    const from = at;
    at += line.length + 1;
    if (/^\s*(\/\/|\/?\*|import|export type)/.test(line)) return [];
    const bare = line.replace(/'[^']*'|`[^`]*`/g, (quoted) => '·'.repeat(quoted.length));
    return SLIPS.flatMap(([pattern, change]) =>
      [...bare.matchAll(pattern)].map((match): Mutant => {
        const place = from + match.index;
        const [found] = match;
        return {
          file,
          line: index + 1,
          was: line.trim(),
          is: `${found.trim()} → ${change(found).trim()}`,
          text: text.slice(0, place) + change(found) + text.slice(place + found.length),
        };
      }),
    );
  });
}

function filesOf(folders: readonly string[]): readonly string[] {
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => join(folder, name)),
  );
  return [...new Set(files)].sort();
}

/** Mutants of a room, drawn by a fixed chance so that two runs try the same ones; at most one a line. */
function drawnMutants({ folders, count }: MutatedRoom): readonly Mutant[] {
  const all = filesOf(folders).flatMap(mutantsOf);
  const chance = chanceOf(7, 1);
  const drawn = new Map<string, Mutant>();
  while (drawn.size < Math.min(count, all.length / 2)) {
    const mutant = chance.pick(all);
    drawn.set(`${mutant.file}:${mutant.line}`, mutant);
  }
  return [...drawn.values()];
}

/** @param args rooms to try, all when none is named; a number is the most mutants of each. */
export function run(args: readonly string[]): void {
  const most = Number(args.find((arg) => /^\d+$/.test(arg)) ?? Number.POSITIVE_INFINITY);
  const named = args.filter((arg) => !/^\d+$/.test(arg));
  const copy = mkdtempSync(join(tmpdir(), 'mutants-'));
  const survivors: string[] = [];
  let tried = 0;
  try {
    for (const folder of ['app', 'components', 'content', 'lib', 'tests']) {
      cpSync(folder, join(copy, folder), { recursive: true });
    }
    for (const file of ['package.json', 'tsconfig.json', 'vitest.config.ts', 'biome.json']) {
      cpSync(file, join(copy, file));
    }
    symlinkSync(join(process.cwd(), 'node_modules'), join(copy, 'node_modules'));
    for (const room of ROOMS.filter((each) => named.length === 0 || named.includes(each.room))) {
      if (!passes(copy, room)) throw new Error(`the tests of ${room.room} fail before anything is changed`);
      for (const { file, line, was, is, text } of drawnMutants(room).slice(0, most)) {
        const before = readFileSync(file, 'utf8');
        writeFileSync(join(copy, file), text);
        const survived = passes(copy, room);
        writeFileSync(join(copy, file), before);
        tried += 1;
        if (survived) survivors.push(`${file}:${line}  ${is}  in  ${was}`);
        process.stdout.write(survived ? 'S' : '.');
      }
    }
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
  const killed = tried - survivors.length;
  process.stdout.write(
    `\n${killed} of ${tried} mutants were noticed (${((100 * killed) / tried).toFixed(1)} %).\n`,
  );
  for (const survivor of survivors) process.stdout.write(`survived: ${survivor}\n`);
}

/** Ten minutes: a mutant that never ends is noticed too. */
const LONGEST_MS = 600_000;

function passes(copy: string, { project, tests }: MutatedRoom): boolean {
  const { status } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--project', project, '--bail', '1', ...tests],
    { cwd: copy, stdio: 'ignore', timeout: LONGEST_MS },
  );
  return status === 0;
}
