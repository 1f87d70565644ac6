import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort } from './address.mjs';
import { findBrowser } from './browser.mjs';
import { ensureBuilt, ensureInstalled } from './ready.mjs';
import { startServer } from './server.mjs';
import { ROOT, runTool, say, step } from './steps.mjs';
import { emptyTally, sumOf, tallyOfOne, tallyOfReport } from './tally.mjs';

/**
 * Runs types, lint, tests and build, and with `browser` the browser tests too. Every part runs even when one before it
 * failed, so that one run shows all. Prints "N passed, N failed" as its last line; types, lint and build count as one each.
 */
export async function runChecks({ browser }) {
  await ensureInstalled();
  const types = await one('types', async () => {
    await runTool('next/dist/bin/next', ['typegen']);
    await runTool('typescript/bin/tsc', ['--noEmit']);
  });
  const lint = await one('lint and format', () =>
    runTool('@biomejs/biome/bin/biome', ['check', '--error-on-warnings', '--max-diagnostics=100', '.']),
  );
  const tests = await vitest('tests without a browser', ['node', 'dom', 'store'], {});
  const build = await one('build', ensureBuilt);
  const pages = browser ? await browserTests(build.failed === 0) : emptyTally();

  const all = sumOf([types, lint, tests, build, pages]);
  for (const failure of all.failures) say(`FAILED ${failure.replace(`${ROOT}/`, '')}`);
  process.stdout.write(`\n${all.passed} passed, ${all.failed} failed\n`);
  process.exitCode = all.failed === 0 && all.passed > 0 ? 0 : 1;
}

async function one(name, work) {
  try {
    await step(name, work);
    return tallyOfOne(name);
  } catch (error) {
    return tallyOfOne(name, error.message);
  }
}

async function browserTests(isBuilt) {
  if (!isBuilt) return tallyOfOne('tests in a browser', 'there is no build to look at');
  let server;
  const data = mkdtempSync(join(tmpdir(), 'read-the-wall-data-'));
  try {
    const env = await step('find a browser', findBrowser);
    const port = await freePort();
    // A site of its own with nobody in it yet; the tests make its owner, its groups and its learners.
    const site = { DATA_DIR: data, DATABASE_URL: '', PUBLIC_ADDRESS: '' };
    server = await step('start the server', () => startServer({ port, host: '127.0.0.1', env: site }));
    const where = { SITE_ADDRESS: server.address, SITE_DATA_DIR: data };
    return await vitest('tests in a browser', ['browser'], { ...env, ...where });
  } catch (error) {
    return tallyOfOne('tests in a browser', error.message);
  } finally {
    await server?.stop();
    await rm(data, { recursive: true, force: true, maxRetries: 20 });
  }
}

async function vitest(name, projects, env) {
  const folder = mkdtempSync(join(tmpdir(), 'read-the-wall-'));
  const report = join(folder, 'report.json');
  const outcome = await one(name, () =>
    runTool(
      'vitest/vitest.mjs',
      [
        'run',
        '--allowOnly=false',
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        ...projects.map((project) => `--project=${project}`),
      ],
      { env },
    ),
  );
  try {
    const tally = tallyOfReport(JSON.parse(readFileSync(report, 'utf8')));
    // Vitest may end badly with every test green: an error outside any test, or no test at all.
    return outcome.failed > 0 && tally.failed === 0 ? sumOf([tally, outcome]) : tally;
  } catch {
    return outcome.failed > 0 ? outcome : tallyOfOne(name, 'vitest left no report');
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
