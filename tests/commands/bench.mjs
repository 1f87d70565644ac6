import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt, ensureInstalled } from './ready.mjs';
import { PlainError, ROOT, runCommand, say } from './steps.mjs';

const FOLDER = join(ROOT, 'tests', 'bench');
/** Take minutes, or a browser: run only when asked for by name. */
const ONLY_BY_NAME = [
  'college',
  'drawing',
  'failover',
  'kills',
  'laws',
  'leak',
  'learners',
  'mutants',
  'photo',
  'tells',
];

await runCommand(async () => {
  await ensureInstalled();
  const { build } = await import('esbuild');
  const cache = join(ROOT, 'node_modules', '.cache');
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, 'bench-'));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  const [wanted, ...args] = process.argv.slice(2);
  for (const name of namesToRun(wanted)) {
    say(`– bench ${name}`);
    // Bundled plainly: a loader that names every closure would be what is measured.
    const outfile = join(folder, `${name}.mjs`);
    await build({
      entryPoints: [join(FOLDER, `${name}.ts`)],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      // Native code and what asks for its parts by name cannot be bundled; they are found beside the cache.
      external: ['better-sqlite3', 'pg', 'kysely', 'vitest', 'esbuild'],
      // The commands find the top folder from where they stand.
      define: { 'import.meta.url': JSON.stringify(import.meta.url) },
      logLevel: 'error',
    });
    const bench = await import(pathToFileURL(outfile).href);
    if (typeof bench.run !== 'function')
      throw new PlainError(`tests/bench/${name}.ts does not export run().`);
    if (bench.needsBuild) await ensureBuilt();
    await bench.run(args);
  }
});

function namesToRun(wanted) {
  const names = existsSync(FOLDER)
    ? readdirSync(FOLDER)
        .filter((file) => file.endsWith('.ts') && !file.startsWith('_'))
        .map((file) => file.slice(0, -'.ts'.length))
        .sort()
    : [];
  if (wanted === undefined) return names.filter((name) => !ONLY_BY_NAME.includes(name));
  if (!names.includes(wanted)) {
    throw new PlainError(`There is no bench "${wanted}". There are: ${names.join(', ') || 'none'}.`);
  }
  return [wanted];
}
