import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { beforeAll, expect, test } from 'vitest';
import { openBrowser } from './browser';
import { hashWalls } from './hash-walls';

const WALLS = 1000;
const BLOCK = 200;

let browser: Awaited<ReturnType<typeof openBrowser>>;

beforeAll(async () => {
  browser = await openBrowser();
});

test(`${WALLS} walls and their keys are the same, byte for byte, in Node and in Chromium`, async () => {
  const bundle = await build({
    entryPoints: [fileURLToPath(new URL('./hash-walls.ts', import.meta.url))],
    bundle: true,
    format: 'iife',
    globalName: 'wallHashes',
    write: false,
    logLevel: 'error',
  });
  const page = await browser.newPage();
  await page.addScriptTag({ content: bundle.outputFiles[0]?.text ?? '' });
  for (let from = 0; from < WALLS; from += BLOCK) {
    const there = await page.evaluate(`wallHashes.hashWalls(${from}, ${from + BLOCK})`);
    expect(there).toEqual(hashWalls(from, from + BLOCK));
  }
  await page.close();
});
