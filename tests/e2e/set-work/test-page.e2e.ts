import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { newContext, openBrowser } from '../browser';
import { type Cast, done, makeCast, WORK } from '../cast';
import { type OwnSite, openOwnSite } from '../own-site';
import { awake, lookAt, mark, pick } from '../practice/practice-steps';

const DESK = { width: 1280, colours: 'light' } as const;

let site: OwnSite;
let cast: Cast;
let work = '';
let attempt = '';
let browser: Browser;

beforeAll(async () => {
  site = await openOwnSite();
  browser = await openBrowser();
  cast = await makeCast(site);
  const { lead, learner } = cast.people;
  const test = {
    title: 'Ties',
    topics: ['ties'],
    walls: '2',
    difficulty: '3',
    offline: 'site',
    openingsUp: '1',
  };
  ({ work } = await done(lead.post('/api/work', { ...WORK, ...test, group: cast.group })));
  await done(lead.post('/api/work/set', { work }));
  ({ attempt } = await done(learner.post('/api/attempts', { work })));
});
afterAll(() => site?.close());

const wallAt = (place: number, of = attempt) => `/api/attempts/${of}/walls/${place}`;
const look = (view: string) => `/look?view=${encodeURIComponent(view)}&system=mm`;

describe('what the page of a test receives', () => {
  test('ties and joints, each like every other, and no code, key or measure', async () => {
    const { learner } = cast.people;
    const page = await (await learner.get(`/my-work/${work}`)).text();
    const wall = await (await learner.get(wallAt(1))).text();
    const cover = await (await learner.get(wallAt(1) + look('before-cover'))).text();
    const { ties, heads, batches } = (JSON.parse(wall) as { wall: Record<string, Record<string, unknown>[]> })
      .wall;
    expect(heads).toEqual([]);
    for (const list of [ties, batches]) {
      const without = (list ?? []).map(({ id, panel, course, x, y, fromCourse, toCourse, ...rest }) => rest);
      expect(without.length).toBeGreaterThan(0);
      expect(new Set(without.map((each) => JSON.stringify(each))).size).toBe(1);
    }
    // A tie's thickness, a bedding, a tape reading: none is written on the drawing.
    const { labels } = JSON.parse(cover) as { labels: { text: string }[] };
    expect(labels.filter(({ text }) => !/^\d+$/.test(text))).toEqual([]);
    for (const text of [page, wall, cover]) {
      expect(text).not.toMatch(/\b[2-9A-HJKMNP-Z]{3}-[2-9A-HJKMNP-Z]{4}-[2-9A-HJKMNP-Z]{3}\b/);
      expect(text).not.toMatch(/shallow-tie|thin-tie|tie-near-face|ties-too-far-apart|no-tie-at-edge/);
    }
  });

  test('nobody else looks at it or measures on it, and only its own walls are there', async () => {
    const use = { used: 'tape', part: 'A1.1', turned: false, from: null };
    for (const role of ['class-mate', 'lead', 'learner of another group'] as const) {
      expect((await cast.people[role].get(wallAt(1) + look('front'))).status, role).toBe(404);
      expect((await cast.people[role].post(`${wallAt(1)}/uses`, use)).status, role).toBe(404);
    }
    const { learner } = cast.people;
    expect((await learner.get(wallAt(3) + look('front'))).status).toBe(404);
    expect((await learner.get(wallAt(1, cast.attempt) + look('front'))).status).toBe(404);
    expect((await learner.get(wallAt(1) + look('inside'))).status).toBe(404);
    expect((await learner.post(`${wallAt(1)}/uses`, { ...use, part: 'Z9.9' })).status).toBe(404);
  });

  test('a unit is looked behind once it is lifted, and no more are lifted than may be', async () => {
    const { learner } = cast.people;
    const lift = (part: string) => learner.post(`${wallAt(1)}/uses`, { used: 'lift', part });
    expect((await learner.get(wallAt(1) + look('behind:A3.2'))).status).toBe(409);
    expect((await lift('A3.2')).status).toBe(200);
    expect((await learner.get(wallAt(1) + look('behind:A3.2'))).status).toBe(200);
    expect((await lift('A3.2')).status).toBe(200);
    expect((await lift('A3.3')).status).toBe(409);
  });

  test('what was used is among the learner’s own data', async () => {
    const { learner } = cast.people;
    const use = { used: 'tape', part: 'A4.2', turned: false, from: null };
    const answer = await (await learner.post(`${wallAt(2)}/uses`, use)).json();
    expect(answer.readings[0]).toMatchObject({ instrument: 'tape', part: 'A4.2', unit: 'mm' });
    const data = await (await learner.get('/api/join/my-data')).text();
    expect(data).toMatch(/"place":\s*2,\s*"used":\s*"tape",\s*"part":\s*"A4.2"/);
  });
});

describe('a test on a screen', () => {
  let page: Page;
  beforeAll(async () => {
    const context = await newContext(browser, {
      viewport: { width: DESK.width, height: 900 },
      colorScheme: DESK.colours,
      reducedMotion: 'reduce',
    });
    page = await context.newPage();
    await page.goto(`${site.address}/join/${cast.joinCode}`);
    await page.getByRole('link', { name: 'Maud' }).click();
    await page.getByLabel('PIN', { exact: true }).fill('4711');
    await page.getByRole('main').getByRole('button').last().click();
    await page.waitForURL('**/my-work');
    await page.goto(`${site.address}/my-work/${work}`);
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByRole('link', { name: 'Wall 1 ·' }).click();
    await awake(page);
  });

  test('every part is named by its place and by nothing else', async () => {
    const names = await page
      .getByRole('gridcell')
      .evaluateAll((cells) => cells.map((cell) => cell.getAttribute('aria-label')?.replace(/\d+/g, '#')));
    expect(names.length).toBeGreaterThan(100);
    // A quoin stands through three courses at the end it is named by: a place too.
    for (const name of new Set(names))
      expect(name).toMatch(/^Course #, (quoin at the (left|right) end, )?unit #$/);
    await lookAt(page, 'test-wall', DESK);
  });

  test('an instrument is answered by the site, and a mark is made', async () => {
    await pick(page, 'A3.2');
    await page.getByText('Measure here').click();
    await page.getByRole('combobox', { name: 'Instrument' }).selectOption('tape');
    await page
      .getByText(/^\d+(\.\d)? mm$/)
      .first()
      .waitFor();
    await lookAt(page, 'test-measured', DESK);
    await mark(page, 'Sliver', 'Unsure');
    await page.getByRole('img', { name: 'Mark 1' }).waitFor();
  });

  test('without a network a look that is not here says so; the mark stays, and the look comes with the network', async () => {
    await page.context().setOffline(true);
    await page.getByRole('radio', { name: 'Before cover' }).check();
    await page.getByText('This look did not arrive. Your marks are kept.').waitFor();
    await lookAt(page, 'test-offline', DESK);
    expect(await page.getByRole('img', { name: 'Mark 1' }).count()).toBe(1);
    await page.context().setOffline(false);
    await page.getByRole('gridcell', { name: /^Tie/ }).first().waitFor({ state: 'attached' });
    expect(await page.getByText('This look did not arrive').count()).toBe(0);
    await lookAt(page, 'test-before-cover', DESK);
  });
});
