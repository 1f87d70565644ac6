import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { openDatabase, type Store } from '../../lib/store/database';
import { type Caller, done, learnerIn, makeCast, WORK } from '../e2e/cast';
import { openOwnSite } from '../e2e/own-site';

/** tests/commands/bench.mjs builds the site first. */
export const needsBuild = true;

const LEARNERS = 400;
const WALLS = 10;
const ALL_BEGUN_WITHIN_MS = 20_000;
const FIRST_WALL_P95_MS = 3_000;
/** The wall that a page brings: a gzip in base64, some 10 KB of it. */
const WALL = /H4sI[\w+/]{3000}/;

/**
 * A college begins at once: ten walls of their own each, drawn ahead when the work was set. All press the button at the same moment;
 * each opens their first wall as soon as they have begun.
 */
export async function run(): Promise<void> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-college-'));
  const site = await openOwnSite({ DATA_DIR: dataDir });
  const store = await openDatabase({ dataDir, databaseUrl: null });
  try {
    const { people, group, joinCode } = await makeCast(site);
    const learners = [];
    for (let n = 1; n <= LEARNERS - 2; n++) learners.push(await learnerIn(site, joinCode, `Learner ${n}`));
    const everybody = [...learners, people.learner, people['class-mate']];
    for (const [offline, how] of [
      ['device', 'given out whole'],
      ['site', 'drawn by the site'],
    ] as const) {
      const spec = {
        ...WORK,
        title: 'Ten walls',
        topics: ['mixed'],
        walls: String(WALLS),
        difficulty: '2',
        offline,
        group,
      };
      const { work } = await done(people.lead.post('/api/work', spec));
      const setAt = performance.now();
      await done(people.lead.post('/api/work/set', { work }));
      while ((await formsDrawn(store, work)) < LEARNERS) await wait(200);
      console.log(
        `${LEARNERS} forms of ${WALLS} walls ${how}: drawn ahead in ${seconds(performance.now() - setAt)}`,
      );
      tell(await allBegin(everybody, work));
    }
  } finally {
    await store.close();
    await site.close();
    await rm(dataDir, { recursive: true, force: true, maxRetries: 20 });
  }
}

/** When each had begun and had a wall, ms from the moment when all press the button; or what went wrong. */
type End = { readonly begun: number; readonly seen: number } | string;

async function allBegin(everybody: readonly Caller[], work: string): Promise<readonly End[]> {
  const from = performance.now();
  return Promise.all(
    everybody.map(async (learner) => {
      try {
        await done(learner.post('/api/attempts', { work }));
        const begun = performance.now() - from;
        const page = await learner.get(`/my-work/${work}/1`);
        const text = await page.text();
        if (page.status !== 200 || !WALL.test(text)) throw new Error(`answered ${page.status}, and no wall`);
        return { begun, seen: performance.now() - from };
      } catch (error) {
        return String(error instanceof Error ? (error.cause ?? error) : error);
      }
    }),
  );
}

function tell(ends: readonly End[]): void {
  const well = ends.filter((end) => typeof end !== 'string');
  const failed = ends.filter((end) => typeof end === 'string');
  const begun = well.map((end) => end.begun).sort((a, b) => a - b);
  const waited = well.map((end) => end.seen - end.begun).sort((a, b) => a - b);
  const seen = well.map((end) => end.seen).sort((a, b) => a - b);
  const at = (times: readonly number[], share: number) => times[Math.ceil(times.length * share) - 1] ?? NaN;
  const held =
    failed.length === 0 && at(begun, 1) <= ALL_BEGUN_WITHIN_MS && at(waited, 0.95) <= FIRST_WALL_P95_MS;
  console.log(
    `${LEARNERS} learners at once on ${cpus().length} cores (load ${loadavg()[0]?.toFixed(1)}): begun p50 ${seconds(at(begun, 0.5))}, ` +
      `all ${seconds(at(begun, 1))} (at most ${seconds(ALL_BEGUN_WITHIN_MS)}); first wall p50 ${seconds(at(waited, 0.5))}, p95 ${seconds(at(waited, 0.95))} ` +
      `(at most ${seconds(FIRST_WALL_P95_MS)}) after they began, all there after ${seconds(at(seen, 1))}; ${failed.length} failed: ${held ? 'held' : 'NOT HELD'}`,
  );
  for (const failure of new Set(failed)) console.log(`  ${failure}`);
}

async function formsDrawn({ db }: Store, work: string): Promise<number> {
  const rows = await db
    .selectFrom('drawn_form')
    .select('learner_id')
    .where('set_work_id', '=', work)
    .execute();
  return rows.length;
}

function seconds(ms: number): string {
  return `${(ms / 1000).toFixed(1)} s`;
}
