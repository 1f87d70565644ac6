import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import { wideCsv } from '../../app/api/export/book-csv';
import { gradeWalls } from '../../app/server/grade-walls';
import { formatResults } from '../../lib/exercise/stored-results';
import { bookLearners, bookRows, bookWorks } from '../../lib/store/book/mark-book';
import { openDatabase, type Store } from '../../lib/store/database';
import { migrate } from '../../lib/store/migrate';
import { realWalls } from '../store/samples/real-walls';
import { sampleAnswers } from '../store/samples/sample-attempt';

const LEARNERS = 10_000;
const WORKS = 40;
const PAGE = 50;
const MOST_PAGE_MS = 200;
const MOST_CSV_MB = 50;

/** The mark book of one group of 10,000 learners with 40 set works, all handed in and marked: 400,000 results in a SQLite file. */
export async function run(): Promise<void> {
  const dataDir = mkdtempSync(join(tmpdir(), 'wall-book-'));
  const store = await openDatabase({ dataDir, databaseUrl: null });
  try {
    await migrate(store, 0);
    await fill(store);
    await firstPage(store);
    await wholeCsv(store);
  } finally {
    await store.close();
    rmSync(dataDir, { recursive: true, force: true });
  }
}

async function firstPage({ db }: Store): Promise<void> {
  const times: number[] = [];
  for (const offset of [0, 0, 0, LEARNERS / 2, LEARNERS - PAGE]) {
    const start = performance.now();
    const works = await bookWorks(db, 'group');
    const learners = await bookLearners(db, 'group', { by: 'name', find: '', without: '' });
    const rows = await bookRows(db, learners.slice(offset, offset + PAGE));
    times.push(performance.now() - start);
    const scores = rows.reduce((sum, { cells }) => sum + cells.size, 0);
    if (works.length !== WORKS || scores !== PAGE * WORKS) throw new Error(`a page of ${scores} scores`);
  }
  const [cold = 0, ...others] = times;
  console.log(
    `mark book, ${LEARNERS} learners × ${WORKS} works: first page of ${PAGE} ${cold.toFixed(0)} ms, ` +
      `then ${others.map((time) => time.toFixed(0)).join(', ')} ms (the middle and the last page among them): ` +
      `${cold <= MOST_PAGE_MS ? 'held' : `NOT HELD, at most ${MOST_PAGE_MS}`}`,
  );
}

async function wholeCsv({ db }: Store): Promise<void> {
  const start = performance.now();
  let signs = 0;
  let pieces = 0;
  let early = 0;
  let most = 0;
  for await (const piece of wideCsv(db, 'group', await bookWorks(db, 'group'))) {
    signs += piece.length;
    pieces += 1;
    const now = process.memoryUsage().rss;
    // The first tenth fills the caches of the machine and of the database; constant memory means no more after that.
    if (pieces <= LEARNERS / 50 / 10) early = Math.max(early, now);
    most = Math.max(most, now);
  }
  const grown = (most - early) / 2 ** 20;
  console.log(
    `the whole as CSV: ${(signs / 2 ** 20).toFixed(1)} MB in ${((performance.now() - start) / 1000).toFixed(1)} s, ` +
      `after its first tenth memory grew by ${grown.toFixed(0)} MB: ${grown <= MOST_CSV_MB ? 'held' : `NOT HELD, at most ${MOST_CSV_MB}`}`,
  );
}

/** In the database's own words: 400,000 hand-ins one by one would be most of the bench. */
async function fill({ db }: Store): Promise<void> {
  const walls = realWalls().slice(0, 1);
  const answers = sampleAnswers(walls).map((wall) => ({ ...wall, code: walls[0]?.code ?? '' }));
  const results = formatResults(gradeWalls(answers)?.results ?? []);
  const upTo = (most: number) =>
    sql`with recursive n(i) as (select 1 union all select i + 1 from n where i < ${most})`;
  await db.transaction().execute(async (trx) => {
    await sql`insert into learning_group (id, name, join_code, created_at) values ('group', 'All', 'ALL', 0)`.execute(
      trx,
    );
    await sql`insert into learner (id, group_id, name, created_at)
      ${upTo(LEARNERS)} select 'learner ' || i, 'group', printf('Learner %05d', i), 0 from n`.execute(trx);
    await sql`insert into set_work (id, group_id, title, spec, secret_seed, state, grace_ms, release, created_by, created_at)
      ${upTo(WORKS)} select 'work ' || i, 'group', 'Work ' || i, '{"walls":1,"sameForAll":true}', '', 'closed', 0, 'by hand', '', i from n`.execute(
      trx,
    );
    await sql`insert into attempt (id, set_work_id, learner_id, number, state, started_at, handed_in_at)
      select l.id || ' ' || w.id, w.id, l.id, 1, 'marked', 0, 1 from learner l cross join set_work w`.execute(
      trx,
    );
    await sql`insert into result_version (attempt_id, version, engine, results, score, reason, made_by, made_at)
      select id, 1, '1', ${results}, (rowid % 101) / 100.0, 'handed in', 'server', 1 from attempt`.execute(
      trx,
    );
  });
}
