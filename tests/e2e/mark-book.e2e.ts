import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { layWall } from '../../lib/generate/generate';
import { parseCode } from '../../lib/generate/wall-code';
import { inspect } from '../../lib/inspect/inspect';
import { openDatabase, type Store } from '../../lib/store/database';
import { INVENTED_LEARNERS, inventGroup } from '../store/samples/invented-group';
import { handInAgain, type InventedGroup } from '../store/samples/invented-hand-ins';
import {
  accessibilityProblems,
  LOOKS,
  type Look,
  newContext,
  openBrowser,
  sidewaysOverflow,
  watch,
} from './browser';
import { type OwnSite, openOwnSite } from './own-site';

const ADA = { name: 'Ada Clay', email: 'ada@example.org', password: 'four red bricks' };
const DESK: Look = { width: 1280, colours: 'light' };

let dataDir: string;
let site: OwnSite;
let store: Store;
let browser: Browser;
let book: InventedGroup;

beforeAll(async () => {
  dataDir = mkdtempSync(join(tmpdir(), 'wall-book-'));
  site = await openOwnSite({ DATA_DIR: dataDir });
  browser = await openBrowser();
  const owner = await fetch(`${site.address}/api/people/set-up`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' },
    body: JSON.stringify({ code: site.startCode, ...ADA }),
  });
  expect(await owner.json()).toEqual({ ok: true, go: '/desk' });
  store = await openDatabase({ dataDir, databaseUrl: null });
  book = await inventGroup(store, {
    name: 'Tuesday evening',
    number: 1,
    learners: INVENTED_LEARNERS.slice(0, 8),
    works: [
      { title: 'Joints', topics: ['joints'], walls: 3, difficulty: 1, sameForAll: true },
      { title: 'Fair test', topics: ['mixed'], walls: 4, difficulty: 3, sameForAll: false },
    ],
  });
});

afterAll(async () => {
  await store?.close();
  await site?.close();
  await rm(dataDir, { recursive: true, force: true, maxRetries: 20 });
});

/** The first place of an attempt whose wall is not sound. */
async function faultyPlace(attempt: string): Promise<number> {
  const walls = await store.db
    .selectFrom('attempt_wall')
    .select(['place', 'code'])
    .where('attempt_id', '=', attempt)
    .orderBy('place')
    .execute();
  const faulty = walls.find(({ code }) => inspect(layWall(parseCode(code)), 'canada').length > 0);
  if (faulty === undefined) throw new RangeError(`attempt ${attempt} has sound walls only`);
  return faulty.place;
}

/** One signed-in browser a look: a password is slow to check on purpose. */
const desks = new Map<Look, Promise<BrowserContext>>();

function atTheDesk(look: Look): Promise<BrowserContext> {
  const desk = desks.get(look) ?? signedIn(look);
  desks.set(look, desk);
  return desk;
}

async function signedIn({ width, colours }: Look): Promise<BrowserContext> {
  const context = await newContext(browser, {
    baseURL: site.address,
    viewport: { width, height: 900 },
    colorScheme: colours,
    reducedMotion: 'reduce',
  });
  const { email, password } = ADA;
  const answer = await context.request.post('/api/people/sign-in', {
    data: { email, password },
    headers: { 'sec-fetch-site': 'same-origin' },
  });
  expect(answer.status()).toBe(200);
  return context;
}

/** Opens a page at the desk, does something there, and gives what went wrong on the way. */
async function onPage(
  path: string,
  look: Look,
  work: (page: Page) => Promise<void>,
): Promise<readonly string[]> {
  const context = await atTheDesk(look);
  const page = await context.newPage();
  const problems = watch(page, site.address);
  await page.goto(path);
  await work(page);
  await page.close();
  return problems;
}

describe.each(LOOKS)('$width px, $colours', (look) => {
  test.each([
    ['the mark book', () => `/desk/groups/${book.group}/book`, 'Mark book: Tuesday evening'],
    ['a set work', () => `/desk/work/${book.works[0]}/book`, 'Joints: marks'],
    ['a wall', () => `/desk/work/${book.works[0]}/walls/1`, 'Joints, wall 1: where the group marked'],
    [
      'one hand-in',
      () => `/desk/work/${book.works[1]}/walls/2?attempt=${book.attempts[1]?.[3]}`,
      'Fair test, wall 2: one hand-in',
    ],
    ['a learner', () => `/desk/learners/${book.learners[0]}`, 'Amal Brook'],
    ['the projector', () => `/desk/work/${book.works[0]}/show?key=yes`, 'Joints, wall 1 of 3'],
  ])('%s is fit for all', async (_, path, heading) => {
    const problems = await onPage(path(), look, async (page) => {
      await page.getByRole('heading', { level: 1, name: heading }).waitFor();
      await page.getByText('Working out what the group').waitFor({ state: 'detached' });
      expect(await accessibilityProblems(page)).toEqual([]);
      expect(await sidewaysOverflow(page)).toBe(0);
    });
    expect(problems).toEqual([]);
  });
});

describe('an instructor with the mark book', () => {
  test('sets another mark: what was typed wrongly stays, and the old mark stays beside the new', async () => {
    const problems = await onPage(`/desk/learners/${book.learners[1]}`, DESK, async (page) => {
      const card = page.getByRole('region', { name: 'Joints, try 1' });
      await card.getByText('Set another mark, or comment').click();
      const form = card.getByRole('form', { name: 'Mark for Joints' });
      await form.getByLabel('Mark, percent').fill('150');
      await form.getByLabel('Reason').fill('The light was out');
      await form.getByRole('button', { name: 'Set this mark' }).click();
      await form.getByRole('heading', { name: 'There is a problem' }).waitFor();
      expect(await form.getByLabel('Mark, percent').inputValue()).toBe('150');
      await form.getByLabel('Mark, percent').fill('95');
      await form.getByRole('button', { name: 'Set this mark' }).click();
      await card.getByRole('heading', { name: 'Joints: 95 %' }).waitFor();
      const marks = card.getByRole('list', { name: 'Marks, the oldest first' }).getByRole('listitem');
      expect(await marks.count()).toBe(2);
      expect(await marks.nth(1).textContent()).toMatch(/95 % set .* by Ada Clay: The light was out/);
    });
    // The refusal itself is a 422, which the browser notes.
    expect(problems.filter((problem) => !problem.includes('422'))).toEqual([]);
  });

  test('lets learners see their results', async () => {
    await onPage(`/desk/work/${book.works[1]}/book`, DESK, async (page) => {
      await page.getByRole('button', { name: 'Release results to learners' }).click();
      await page.getByText('Learners see their results.').waitFor();
    });
  });

  test('shows a wall: marks come by themselves, the key on a press', async () => {
    const place = await faultyPlace(book.attempts[0]?.[0] ?? '');
    const problems = await onPage(`/desk/work/${book.works[0]}/show?place=${place}`, DESK, async (page) => {
      const counts = page.getByRole('status');
      await counts.getByText('8 handed in').waitFor();
      expect(await page.getByRole('list', { name: 'Faults that are there' }).count()).toBe(0);
      await handInAgain(store, book, { work: 0, name: 'Ninth Person' });
      await counts.getByText('9 handed in').waitFor();
      await page.getByRole('link', { name: 'Show the key' }).click();
      await page.getByRole('list', { name: 'Faults that are there' }).waitFor();
    });
    expect(problems).toEqual([]);
  });

  test('takes the mark book away, and gives a calendar its due dates', async () => {
    await onPage(`/desk/groups/${book.group}/book`, DESK, async (page) => {
      const href = await page
        .getByRole('link', { name: 'Table, one row a learner (CSV)' })
        .getAttribute('href');
      const csv = await page.request.get(href ?? '');
      expect(csv.headers()['content-type']).toBe('text/csv; charset=utf-8; header=present');
      expect(csv.headers()['content-disposition']).toContain('filename="Tuesday evening wide.csv"');
      expect(await csv.text()).toMatch(/^\uFEFFlearner_ref,learner,Joints,Fair test\r\n/);
      await page.getByRole('button', { name: 'Make a calendar address' }).click();
      const address = await page.getByText(`${site.address}/api/calendar/`).textContent();
      const calendar = await fetch(address ?? '');
      expect(calendar.headers.get('content-type')).toBe('text/calendar; charset=utf-8');
      expect(await calendar.text()).toMatch(/SUMMARY:Due: Fair test\r\n/);
    });
  });

  test('sets the work that the group needs', async () => {
    await onPage(`/desk/groups/${book.group}/book`, DESK, async (page) => {
      await page
        .getByRole('link', { name: /^Set 6 walls on / })
        .first()
        .click();
      await page.getByRole('heading', { level: 1, name: 'Set work' }).waitFor();
      expect(await page.getByLabel('Title').inputValue()).toMatch(/^More practice: /);
    });
  });
});
