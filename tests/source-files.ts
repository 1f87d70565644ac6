import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { codeOf } from './code-of';

/** What tools make and git ignores; the same list as .gitignore. */
const NOT_OURS =
  /^(node_modules|\.next|\.data|\.git|coverage|next-env\.d\.ts|\.DS_Store|.*\.tsbuildinfo|\.env.*\.local)$/;

export interface SourceFile {
  /** From the top folder, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** The text without comments and without what stands in quotes: what the machine is told to do. */
  readonly code: string;
}

export interface Import {
  readonly from: string;
  readonly typeOnly: boolean;
}

export function topLevelEntries(): readonly string[] {
  return readdirSync('.').filter((name) => !NOT_OURS.test(name));
}

/** Every file below `folder` ('.' for all), sorted by path. */
export function filesUnder(folder: string): readonly SourceFile[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => !NOT_OURS.test(entry.name))
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = join(folder, entry.name).replaceAll('\\', '/');
      if (entry.isDirectory()) return filesUnder(path);
      const text = readFileSync(path, 'utf8');
      return [{ path, text, code: codeOf(text) }];
    });
}

/** Frozen engines are made by a tool, and are what they were. */
export function isScript(file: SourceFile): boolean {
  return /\.(ts|tsx|mjs)$/.test(file.path) && !/\/engine-\d+\.mjs$/.test(file.path);
}

const IMPORT =
  /\b(?:import|export)\s+(type\s+)?(?:[\w*{][^'"`;]*?\s+from\s*)?'([^']+)'|\bimport\(\s*'([^']+)'\s*\)/g;

export function importsOf(text: string): readonly Import[] {
  const withoutComments = text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/[^\n]*/gm, '');
  return [...withoutComments.matchAll(IMPORT)].map(([, type, from, dynamic]) => ({
    from: from ?? dynamic ?? '',
    typeOnly: type !== undefined,
  }));
}

/** Places of a pattern in the code, as "path:line". */
export function placesOf(files: readonly SourceFile[], pattern: RegExp): readonly string[] {
  return files.flatMap(({ path, code }) =>
    code.split('\n').flatMap((line, index) => (pattern.test(line) ? [`${path}:${index + 1}`] : [])),
  );
}
