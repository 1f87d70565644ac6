import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const IMPORTED = /(?:from|import) '(\.[^']*)'|import\('(\.[^']*)'\)/g;
const ENDINGS = ['', '.ts', '.tsx', '.mjs', '/index.ts'];

/** How many imports lie between a test and each file that it reaches. */
export function reachOf(test: string): ReadonlyMap<string, number> {
  const reached = new Map([[test, 0]]);
  for (const [file, steps] of reached) {
    for (const imported of importsOf(file)) {
      if (!reached.has(imported)) reached.set(imported, steps + 1);
    }
  }
  return reached;
}

const known = new Map<string, readonly string[]>();

function importsOf(file: string): readonly string[] {
  const before = known.get(file);
  if (before !== undefined) return before;
  const paths = [...readFileSync(file, 'utf8').matchAll(IMPORTED)].flatMap(([, still, late]) => {
    const bare = join(dirname(file), still ?? late ?? '');
    const path = ENDINGS.map((ending) => bare + ending).find(
      (each) => /\.\w+$/.test(each) && existsSync(each),
    );
    return path === undefined ? [] : [path];
  });
  known.set(file, paths);
  return paths;
}
