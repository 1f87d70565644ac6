// Makes one file of all that lays the walls of an engine, so that its codes open the same walls for good.
//
//   node tests/commands/freeze-engine.mjs [COMMIT]        (HEAD when left out)
//
// Run it before ENGINE is raised, with the last commit of the engine that ends. Then name the new file in
// lib/engines/engines.ts, raise ENGINE, and print the frozen table anew (tests/frozen).

import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const commit = execFileSync('git', ['rev-parse', process.argv[2] ?? 'HEAD'], { encoding: 'utf8' }).trim();
// Below the top folder, where the packages are found.
const copy = mkdtempSync(join('node_modules', '.engine-'));

try {
  const archive = execFileSync('git', ['archive', commit, 'lib'], { maxBuffer: 2 ** 28 });
  execFileSync('tar', ['-x', '-C', copy], { input: archive });
  const entry = join(copy, 'lib/generate/engine.ts');
  // The first engines had no such file; today's says what is wanted of them.
  if (!existsSync(entry)) writeFileSync(entry, readFileSync('lib/generate/engine.ts'));
  const [, engine] = readFileSync(join(copy, 'lib/generate/brief.ts'), 'utf8').match(/ENGINE = (\d+)/) ?? [];
  const file = `lib/engines/engine-${engine}.mjs`;
  await build({
    entryPoints: [entry],
    outfile: file,
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    banner: {
      js: `// Engine ${engine}, made by tests/commands/freeze-engine.mjs from ${commit.slice(0, 10)}. Never edited.`,
    },
  });
  writeFileSync(
    file.replace(/mjs$/, 'd.mts'),
    "import type { EarlierEngine } from './engines';\n\nexport const { lay, layWithoutFaults, plannedFaults }: EarlierEngine;\n",
  );
  process.stdout.write(`${file}: ${readFileSync(file).length} bytes\n`);
} finally {
  rmSync(copy, { recursive: true });
}
