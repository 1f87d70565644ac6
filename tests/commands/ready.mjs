import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';
import { ROOT, run, runTool, say, step } from './steps.mjs';

const LOCK = join(ROOT, 'package-lock.json');
const INSTALLED_FROM = join(ROOT, 'node_modules', '.installed-from');
const BUILT_FROM = join(ROOT, '.next', 'built-from');
const BUILD_ID = join(ROOT, '.next', 'BUILD_ID');

/** What the build is made of. A change in tests alone does not ask for a new build. */
const SOURCES = [
  'app',
  'components',
  'content',
  'lib',
  'instrumentation.ts',
  'proxy.ts',
  'package-lock.json',
  'next.config.ts',
  'tsconfig.json',
];

/** Installs exactly what the lock file says, unless that very lock is installed already. */
export async function ensureInstalled() {
  const wanted = hashOf([LOCK]);
  if (textOf(INSTALLED_FROM) === wanted) return;
  if (!wasInstalledByHand()) {
    // Development packages too, even where NODE_ENV is "production": the build needs the compiler.
    await step('install the packages of package-lock.json', () => run('npm', ['ci', '--include=dev']));
  }
  writeFileSync(INSTALLED_FROM, wanted);
}

/** npm leaves its own record when somebody ran `npm ci`; it counts when it is younger than the lock. */
function wasInstalledByHand() {
  const record = join(ROOT, 'node_modules', '.package-lock.json');
  if (!existsSync(record) || existsSync(INSTALLED_FROM)) return false;
  return statSync(record).mtimeMs >= statSync(LOCK).mtimeMs;
}

/** Builds the site, unless the build in .next was made from these very sources. */
export async function ensureBuilt() {
  const sources = hashOf(SOURCES.flatMap((name) => filesUnder(join(ROOT, name))));
  if (existsSync(BUILD_ID) && textOf(BUILT_FROM) === `${sources} ${textOf(BUILD_ID)}`) {
    say('– the build is up to date');
    return;
  }
  rmSync(BUILT_FROM, { force: true });
  await step('build the site', async () => {
    await runTool('next/dist/bin/next', ['build']);
    withoutFramework();
    await bundleServer();
    await compressAssets();
  });
  writeFileSync(BUILT_FROM, `${sources} ${textOf(BUILD_ID)}`);
}

/** Pages to read and nothing else: safety, sources, the words of the trade and each of them. */
const TO_READ = /^(safety|sources|glossary)(\/[a-z-]+)?\.html$/;

/**
 * What a page to read does without: the scripts of the framework, which would find nothing on it to do. The script of the frame stays, which
 * stands in the page, and so does what tells a search engine what the page is about. Whoever comes by a link from another page of the site
 * gets the page by the scripts that are there already.
 */
function withoutFramework() {
  const pages = join(ROOT, '.next', 'server', 'app');
  for (const file of filesUnder(pages)) {
    if (!TO_READ.test(file.slice(pages.length + 1))) continue;
    const html = readFileSync(file, 'utf8');
    const bare = html
      .replace(/<script(?![^>]*ld\+json)[^>]*>(?!\(\(\) => \{)[\s\S]*?<\/script>/g, '')
      .replace(/<link[^>]*(as="script"|rel="modulepreload")[^>]*>/g, '');
    writeFileSync(file, bare);
  }
}

/** The programs that listen: plain files beside the pages they serve. */
async function bundleServer() {
  const { build } = await import('esbuild');
  await build({
    entryPoints: ['serve', 'page-maker'].map((name) => join(ROOT, 'app', 'serve', `${name}.ts`)),
    outdir: join(ROOT, '.next', 'serve'),
    outExtension: { '.js': '.mjs' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'error',
  });
}

/** Beside each script and style what a browser takes in its place: made once, and better than there is time for at a request. */
async function compressAssets() {
  const files = filesUnder(join(ROOT, '.next', 'static')).filter((file) => /\.(js|css|svg|json)$/.test(file));
  await Promise.all(
    files.map(async (file) => {
      const text = readFileSync(file);
      writeFileSync(`${file}.br`, await promisify(brotliCompress)(text));
      writeFileSync(`${file}.gz`, await promisify(gzip)(text, { level: 9 }));
    }),
  );
}

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesUnder(join(path, name)));
}

/** By content and not by time: a fresh clone gives every file the same time. */
function hashOf(files) {
  const hash = createHash('sha256');
  for (const file of files) {
    const text = readFileSync(file);
    hash.update(`${file.slice(ROOT.length)} ${text.length}\n`).update(text);
  }
  return hash.digest('hex');
}

function textOf(file) {
  return existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
}
