import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Timing } from './drawing-page';
import { presented, type Zoomed } from './trace/presented';

/** Units, and how many of them stand side by side. */
const WALLS = [
  [500, 25],
  [2000, 50],
] as const;
const SLOWER = 4;
const ROUNDS = 3;
const FLAGS = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-sync'];

// Named at run time: they are too large to be bundled with the bench.
const installed = createRequire(join(process.cwd(), 'package.json'));

/**
 * Draws, clicks and zooms walls in a Chromium slowed down four times, and prints the times beside those of the same wall drawn by
 * bare DOM calls. Times hang on the machine; the ratios do so less. Needs CHROME_PATH where Chromium is not at its usual place.
 */
export async function run(): Promise<void> {
  const { build } = installed('esbuild') as typeof import('esbuild');
  const { chromium } = installed('playwright-core') as typeof import('playwright-core');
  const [script, style] = await bundled(build);
  const executablePath = process.env.CHROME_PATH ?? '/usr/bin/chromium';
  const browser = await chromium.launch({ executablePath, args: FLAGS }).catch((error: unknown) => {
    throw new Error(`bench drawing: no Chromium starts from ${executablePath}; set CHROME_PATH`, {
      cause: error,
    });
  });
  const page = await browser.newPage({ viewport: { width: 1000, height: 700 } });
  // The ground of the page, as on the site.
  await page.setContent('<!doctype html><body style="margin:0;--paper:#f4f0e8">');
  await page.addStyleTag({ content: style });
  await page.addScriptTag({ content: script });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  console.log('drawing, 4 times slowed down: best of three, site beside bare DOM calls');
  for (const [units, across] of WALLS) {
    const [site, bare] = [[], []] as [(Timing & Zoomed)[], (Timing & Zoomed)[]];
    const measure = async (way: string) => {
      const timing = await page.evaluate<Timing>(`drawing.measure('${way}', ${units}, ${across})`);
      return { ...timing, ...(await presented(browser, () => page.evaluate(`drawing.zoom('${way}')`))) };
    };
    for (let round = 0; round < ROUNDS; round++) {
      site.push(await measure('site'));
      bare.push(await measure('bare'));
    }
    const row = (what: string, of: keyof Timing | keyof Zoomed) => {
      const [ours, theirs] = [site, bare].map((all) => Math.min(...all.map((each) => each[of]))) as [
        number,
        number,
      ];
      const ratio = (ours / theirs).toFixed(1);
      console.log(`  ${units} units, ${what}: ${Math.round(ours)} / ${Math.round(theirs)} = ${ratio}`);
    };
    row('first paint, ms', 'first');
    row('worst of 50 clicks to paint, ms', 'worstClick');
    row('zoom frame on the screen, 95th of 100, ms', 'frame95');
    row('last step of a zoom to the picture at rest, ms', 'rest');
    row('elements', 'elements');
  }
  await browser.close();
}

async function bundled(build: typeof import('esbuild').build): Promise<readonly [string, string]> {
  const { outputFiles } = await build({
    entryPoints: [join(process.cwd(), 'tests', 'bench', 'drawing-page.tsx')],
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'drawing',
    jsx: 'automatic',
    define: { 'process.env.NODE_ENV': '"production"' },
    outdir: 'out',
    write: false,
    logLevel: 'error',
  });
  const of = (ending: string) => outputFiles.find(({ path }) => path.endsWith(ending))?.text ?? '';
  return [of('.js'), of('.css')];
}
