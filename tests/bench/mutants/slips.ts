import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformSync } from 'esbuild';

/** One slip of the hand in one line of a file. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** The line as it stands. */
  readonly was: string;
  /** What is changed in it: `<= → <`. */
  readonly change: string;
  /** The whole file with the slip in it. */
  readonly text: string;
}

type Slip = readonly [pattern: RegExp, change: (found: string) => string];

const SLIPS: readonly Slip[] = [
  [/ <= /g, () => ' < '],
  [/ >= /g, () => ' > '],
  [/ < (?=[\w(])/g, () => ' <= '],
  [/ > (?=[\w(])/g, () => ' >= '],
  [/ === /g, () => ' !== '],
  [/ !== /g, () => ' === '],
  [/ && /g, () => ' || '],
  [/ \|\| /g, () => ' && '],
  [/ \+ /g, () => ' - '],
  [/ - /g, () => ' + '],
  [/ \* /g, () => ' / '],
  [/ \/ /g, () => ' * '],
  [/\bif \(/g, () => 'if (false && '],
  [/Math\.max/g, () => 'Math.min'],
  [/Math\.min/g, () => 'Math.max'],
  [/\.some\(/g, () => '.every('],
  [/\.every\(/g, () => '.some('],
  [/\btrue\b/g, () => 'false'],
  [/\bfalse\b/g, () => 'true'],
  // A figure moved by one, or by one in a hundred.
  [/(?<=[ (,[-])\d[\d_]*(?=[,;) \]])/g, (found) => String(Number(found.replaceAll('_', '')) + 1)],
  [/(?<=[ (,[-])\d+\.\d+(?=[,;) \]])/g, (found) => String(Number(found) * 1.01)],
];

/** Slips in what is quoted: how a query compares and sorts. */
const QUOTED_SLIPS: readonly Slip[] = [
  [/(?<=, )'='(?=,)/g, () => "'!='"],
  [/(?<=, )'>='(?=,)/g, () => "'>'"],
  [/(?<=, )'<='(?=,)/g, () => "'<'"],
  [/(?<=, )'desc'(?=\))/g, () => "'asc'"],
];

/**
 * Mutants of some folders: drawn by the hash of what is changed, so that two runs try the same ones
 * and a change elsewhere draws no others. At most one a line; none that only changes a type or a comment.
 */
export function drawMutants(folders: readonly string[], count: number, seed: number): readonly Mutant[] {
  const ranked = folders
    .flatMap(filesUnder)
    .flatMap(mutantsOf)
    .map((mutant) => ({ mutant, rank: rankOf(mutant, seed) }))
    .sort((a, b) => (a.rank < b.rank ? -1 : 1));
  const drawn = new Map<string, Mutant>();
  for (const { mutant } of ranked) {
    const place = `${mutant.file}:${mutant.line}`;
    if (drawn.size === count) break;
    if (!drawn.has(place) && changesCode(mutant)) drawn.set(place, mutant);
  }
  return [...drawn.values()];
}

/** The mutant as JavaScript, or null where it does not parse. */
export function asCode(text: string): string | null {
  try {
    return transformSync(text, { loader: 'ts', logLevel: 'silent' }).code;
  } catch {
    return null;
  }
}

function changesCode({ file, text }: Mutant): boolean {
  return asCode(text) !== asCode(readFileSync(file, 'utf8'));
}

function rankOf({ file, was, change }: Mutant, seed: number): string {
  return createHash('sha256').update(`${seed} ${file} ${was} ${change}`).digest('hex');
}

function filesUnder(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));
}

/** Every slip that can be made in a file; comments, imports and words are left alone. */
function mutantsOf(file: string): readonly Mutant[] {
  const text = readFileSync(file, 'utf8');
  let at = 0;
  return text.split('\n').flatMap((line, index) => {
    const from = at;
    at += line.length + 1;
    if (/^\s*(\/\/|\/?\*|import|export type)/.test(line)) return [];
    const bare = line.replace(/'[^']*'|`[^`]*`/g, (quoted) => '·'.repeat(quoted.length));
    const slipsIn = (where: string, slips: readonly Slip[]) =>
      slips.flatMap(([pattern, change]) =>
        [...where.matchAll(pattern)].map((match): Mutant => {
          const place = from + match.index;
          const [found] = match;
          return {
            file,
            line: index + 1,
            was: line.trim(),
            change: `${found.trim()} → ${change(found).trim()}`,
            text: text.slice(0, place) + change(found) + text.slice(place + found.length),
          };
        }),
      );
    return [...slipsIn(bare, SLIPS), ...slipsIn(line, QUOTED_SLIPS)];
  });
}
