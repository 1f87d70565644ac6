import axeCore from 'axe-core';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { expect } from 'vitest';

// Set by tests/commands/checks.mjs, which starts the site and finds the browser.
const { SITE_ADDRESS = '', CHROME_PATH = '', CHROME_KIND, CHROME_LIBRARIES } = process.env;

/** What takes longer hangs, however busy the machine is. */
const HANGS_MS = 300_000;

/** Chromium's notice that the styles of a page linked to were fetched ahead and wait to be used. They are meant to. */
const FETCHED_AHEAD =
  /^The resource \S+\.css was preloaded using link preload but not used within a few seconds from the window's load event\./;

const FLAGS = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-sync',
  '--disable-component-update',
];

/** The Chromium from the package registry has no graphics of its own; it brings software ones along. */
const FETCHED_FLAGS = [
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
];

export interface Look {
  readonly width: number;
  readonly colours: 'light' | 'dark';
}

const PHONE_BY_DAY: Look = { width: 390, colours: 'light' };

/** Phone by day, desk by night: each width and each set of colours once. */
export const LOOKS: readonly Look[] = [PHONE_BY_DAY, { width: 1280, colours: 'dark' }];

/** The other two pairs. */
const SWAPPED: readonly Look[] = [
  { width: 390, colours: 'dark' },
  { width: 1280, colours: 'light' },
];

interface PageInTurn {
  readonly path: string;
  readonly looks: readonly Look[];
}

/** Each page with each width and each set of colours; every second page in the other pairs. */
export function pagesInTurn(paths: readonly string[]): readonly PageInTurn[] {
  return paths.map((path, index) => ({ path, looks: index % 2 === 0 ? LOOKS : SWAPPED }));
}

export interface Visit {
  readonly page: Page;
  /** Grows while the page is open: console errors and warnings, uncaught errors, failed or foreign requests. */
  readonly problems: readonly string[];
  readonly close: () => Promise<void>;
}

let running: Browser | undefined;

/** The browser of all files that run in this process; it ends with the process. */
export async function openBrowser(): Promise<Browser> {
  // One that crashed, or was closed, is replaced: the next file is not to fail by it.
  if (!running?.isConnected()) running = await startBrowser();
  return running;
}

async function startBrowser(): Promise<Browser> {
  const env = CHROME_LIBRARIES ? { ...definedEnvironment(), LD_LIBRARY_PATH: CHROME_LIBRARIES } : undefined;
  return chromium.launch({
    executablePath: CHROME_PATH,
    args: CHROME_KIND === 'fetched' ? [...FLAGS, ...FETCHED_FLAGS] : [...FLAGS, '--disable-gpu'],
    ...(env ? { env } : {}),
  });
}

/** A fresh profile whose pages wait for a busy machine. */
export async function newContext(browser: Browser, options: BrowserContextOptions): Promise<BrowserContext> {
  const context = await browser.newContext(options);
  context.setDefaultTimeout(HANGS_MS);
  return context;
}

function sizeOf(width: number) {
  return { width, height: width < 600 ? 844 : 900 };
}

/** Opens a page of the site in a fresh profile and waits until it is loaded and has fetched what it links to. */
export async function visit(
  browser: Browser,
  path: string,
  { width, colours }: Look,
  site = SITE_ADDRESS,
): Promise<Visit> {
  const context = await newContext(browser, {
    viewport: sizeOf(width),
    colorScheme: colours,
    hasTouch: width < 600,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  const problems = watch(page, site);
  await page.goto(site + path);
  await page.waitForLoadState('networkidle');
  return { page, problems, close: () => context.close() };
}

/** Loads a page once and looks at it in all its looks: fit for all, nothing to scroll sideways, nothing on the console. */
export async function expectInOrder(
  browser: Browser,
  { path, looks: [first = PHONE_BY_DAY, ...others] }: PageInTurn,
  unfold: (page: Page) => Promise<void> = async () => {},
): Promise<void> {
  const { page, problems, close } = await visit(browser, path, first);
  await unfold(page);
  for (const { width, colours } of [first, ...others]) {
    await page.setViewportSize(sizeOf(width));
    await page.emulateMedia({ colorScheme: colours });
    expect(await accessibilityProblems(page), `${width} px, ${colours}`).toEqual([]);
    expect(await sidewaysOverflow(page), `${width} px, ${colours}`).toBe(0);
  }
  expect(problems).toEqual([]);
  await close();
}

/**
 * What axe finds wrong but in the parts left out, one line a rule and place; empty when the page is fit for all. With `rules`, by
 * these alone. The site has no frames, so axe runs in the page as it stands, put there once.
 */
export async function accessibilityProblems(
  page: Page,
  leftOut?: string,
  rules?: readonly string[],
): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axeCore.source);
  return page.evaluate(
    async ([exclude, runOnly]) => {
      const { axe } = window as unknown as { readonly axe: typeof axeCore };
      const { violations } = await axe.run(exclude ? { exclude: [exclude] } : document, {
        preload: false,
        resultTypes: ['violations'],
        ...(runOnly ? { runOnly: [...runOnly] } : {}),
      });
      return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
    },
    [leftOut, rules] as const,
  );
}

/** By how many pixels the page is wider than the screen; 0 when nothing has to be scrolled sideways. */
export async function sidewaysOverflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** A list that grows with what goes wrong on a page. */
export function watch(page: Page, site: string): string[] {
  const problems: string[] = [];
  page.on('console', (message) => {
    const isProblem = message.type() === 'error' || message.type() === 'warning';
    if (isProblem && !FETCHED_AHEAD.test(message.text())) {
      problems.push(`console ${message.type()}: ${message.text()} (${message.location().url})`);
    }
  });
  page.on('pageerror', (error) => problems.push(`uncaught: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    const isOwn = url.startsWith(site) || url.startsWith('data:') || url.startsWith('blob:');
    if (!isOwn) problems.push(`request to another host: ${url}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) problems.push(`answered ${response.status()}: ${response.url()}`);
  });
  return problems;
}

function definedEnvironment(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).filter((entry): entry is [string, string] => entry[1] !== undefined),
  );
}
