import { gunzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CHECKS } from '../../lib/inspect/finding';
import { newContext, openBrowser } from './browser';
import { type Caller, newCaller } from './cast';
import { type OwnSite, openOwnSite } from './own-site';
import { lookAt } from './practice/practice-steps';

const PASSWORD = 'four words in a row';
const PHONE = { width: 390, colours: 'light' } as const;
/** A wall code. */
const CODE = /\b[2-9A-HJKMNP-Z]{3}-[2-9A-HJKMNP-Z]{4}-[2-9A-HJKMNP-Z]{3}\b/;
const DESK = { width: 1280, colours: 'dark' } as const;

let site: OwnSite;
let browser: Browser;
let desk: Page;
let owner: Caller;
let group = '';
let joinCode = '';

beforeAll(async () => {
  site = await openOwnSite();
  browser = await openBrowser();
  owner = newCaller(site);
  const person = { name: 'Olive Owner', email: 'olive@example.org', password: PASSWORD };
  expect((await owner.post('/api/people/set-up', { ...person, code: site.startCode })).ok).toBe(true);
  desk = await newPage(DESK);
  await desk.goto(`${site.address}/sign-in`);
  await desk.getByLabel('E-mail').fill(person.email);
  await desk.getByLabel('Password').fill(PASSWORD);
  await desk.getByRole('button', { name: 'Sign in' }).click();
  await desk.waitForURL('**/desk');
});

afterAll(async () => {
  await site?.close();
});

async function newPage({ width, colours }: typeof PHONE | typeof DESK): Promise<Page> {
  const context = await newContext(browser, {
    viewport: { width, height: 900 },
    colorScheme: colours,
    reducedMotion: 'reduce',
  });
  return context.newPage();
}

/** A learner's phone, signed in by way of the group's code. */
async function phoneOf(name: string): Promise<Page> {
  const page = await newPage(PHONE);
  await page.goto(`${site.address}/join/${joinCode}`);
  await page.getByRole('link', { name }).click();
  await page.getByLabel('PIN', { exact: true }).fill('2468');
  await page.getByLabel('The same PIN again').fill('2468');
  await page.getByRole('main').getByRole('button').last().click();
  await page.waitForURL('**/my-work');
  return page;
}

/** Says of one wall of the list that it is sound. */
async function saySound(page: Page, place: number, of: number): Promise<void> {
  await page.getByRole('link', { name: `Wall ${place} ·` }).click();
  await page.getByRole('heading', { name: `Wall ${place} of ${of}` }).waitFor();
  await page.locator('[data-ready="true"]').waitFor();
  await page.getByRole('button', { name: 'This wall is sound' }).click();
  await page.getByRole('button', { name: 'Done: the wall is sound' }).click();
  await page.getByRole('heading', { name: 'Your walls' }).waitFor();
}

describe('a group and its set work', () => {
  test('a roster is checked line by line; nothing is added while a line is wrong', async () => {
    await lookAt(desk, 'desk', DESK);
    await desk.getByLabel('Name of the group').fill('Tuesday, first year');
    await desk.getByRole('button', { name: 'Make the group' }).click();
    await desk.waitForURL('**/desk/groups/*');
    group = desk.url().split('/').at(-1) ?? '';
    const names = desk.getByLabel('Names, one on each line');
    await names.fill('Ada Birch\nBo\nada birch');
    await desk.getByRole('button', { name: 'Check the names' }).click();
    await desk.getByText('Line 3: "ada birch" stands on line 1 too.').waitFor();
    expect(await desk.getByRole('heading', { name: 'Roster (0)' }).count()).toBe(1);
    await names.fill('name,time\nAda Birch,\nBo,150\nCy,');
    await desk.getByRole('button', { name: 'Check the names' }).click();
    await desk.getByRole('button', { name: 'Add 3 learners' }).click();
    await desk.getByRole('heading', { name: 'Roster (3)' }).waitFor();
    joinCode = (await desk.getByText(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/).textContent()) ?? '';
    await lookAt(desk, 'desk-group', DESK);
  });

  test('set work is made from a template, looked at with key and match, and set', async () => {
    await desk.goto(`${site.address}/desk/groups/${group}/set?template=warm-up`);
    await desk.getByLabel('Title').fill('');
    await desk.getByRole('button', { name: 'Save as draft' }).click();
    await desk.getByRole('link', { name: 'Write a title' }).waitFor();
    expect(await desk.getByLabel('How many walls').inputValue()).toBe('2');
    await lookAt(desk, 'desk-set-wrong', DESK);
    await desk.getByLabel('Title').fill('Warm-up');
    await desk.getByRole('button', { name: 'Save as draft' }).click();
    await desk.waitForURL('**/desk/work/*');
    await desk.getByText('Every form has the same topics, kinds of wall and level.').waitFor();
    await desk.getByText('Key of wall 1').click();
    await lookAt(desk, 'desk-work', DESK);
    await desk.getByRole('button', { name: 'Publish to the group' }).click();
    await desk.getByText('Published. Learners can see it.').waitFor();
  });

  test('what is folded away opens when it is wrong', async () => {
    await desk.goto(`${site.address}/desk/groups/${group}/set`);
    await desk.getByText('Time and tries').click();
    await desk.getByLabel('Attempts').fill('0');
    await desk.getByText('Time and tries').click();
    await desk.getByRole('button', { name: 'Save as draft' }).click();
    await desk.getByRole('link', { name: 'Attempts: write a whole number from 1 to 9.' }).click();
    expect(await desk.getByLabel('Attempts').evaluate((field) => field === document.activeElement)).toBe(
      true,
    );
  });

  test('question sheets and key print apart', async () => {
    await desk.goto(`${site.address}/desk/groups/${group}`);
    await desk.getByRole('link', { name: 'Warm-up', exact: true }).click();
    await desk.getByRole('link', { name: 'Print' }).click();
    await desk.getByRole('heading', { name: 'Key: Warm-up' }).waitFor();
    await lookAt(desk, 'desk-print', DESK);
    await desk.emulateMedia({ media: 'print' });
    const breaks = await desk
      .getByRole('heading', { name: 'Key: Warm-up' })
      .evaluate((heading) => getComputedStyle(heading.parentElement as Element).breakBefore);
    expect(breaks).toBe('page');
    expect(await desk.getByRole('img', { name: 'QR code to hand in' }).count()).toBe(1);
    await desk.emulateMedia({ media: 'screen' });
  });
});

describe('a learner on a phone', () => {
  test('begins, goes on in flight mode, hands in, and has the receipt when the network is back', async () => {
    const page = await phoneOf('Ada Birch');
    await lookAt(page, 'my-work', PHONE);
    await page.getByRole('link', { name: 'Warm-up' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await page.getByText('○ Not begun').first().waitFor();
    // The page brings one wall and fetches the other.
    await page.getByText('You can go on without a network').waitFor();
    await page.waitForLoadState('networkidle');
    await lookAt(page, 'my-work-walls', PHONE);
    await page.context().setOffline(true);
    await saySound(page, 1, 2);
    await page.getByRole('button', { name: 'Hand in all 2 walls' }).click();
    await page.getByText('Wall 2 is not answered').waitFor();
    await saySound(page, 2, 2);
    await lookAt(page, 'my-work-done', PHONE);
    // Tapped twice: the second tap finds the button gone or the hand-in there.
    await page.getByRole('button', { name: 'Hand in all 2 walls' }).dblclick();
    await page.getByRole('heading', { name: 'Waiting to be sent' }).waitFor();
    await lookAt(page, 'my-work-waiting', PHONE);
    await page.context().setOffline(false);
    await page.getByRole('heading', { name: 'Received' }).waitFor();
    await page.getByRole('heading', { name: 'Practice result' }).waitFor();
    expect(await page.getByText(/receipt/).textContent()).toMatch(/[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}/);
    expect(await page.getByText(/certified/i).count()).toBe(0);
    await lookAt(page, 'my-work-result', PHONE);
    for (const place of [1, 2]) {
      await page.getByRole('link', { name: new RegExp(`Wall ${place}`) }).click();
      await page.getByRole('heading', { name: 'Result' }).waitFor();
      // Each fault beside the same place built right; a sound wall has none.
      const faults = await page.getByRole('button', { name: /^Show it on the wall/ }).count();
      const pictures = page.getByRole('figure').getByRole('img');
      expect(await pictures.count()).toBe(2 * faults);
      for (const picture of await pictures.all()) {
        await picture.scrollIntoViewIfNeeded();
        await expect.poll(() => picture.evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBe(480);
      }
      await page.getByRole('link', { name: 'All walls' }).click();
    }
    await page.context().close();
  });

  test('what was said before the phone was shut off is there after it; a hand-in waits and goes off by itself', async () => {
    const page = await phoneOf('Bo');
    await page.getByRole('link', { name: 'Warm-up' }).click();
    await page.getByRole('button', { name: 'Begin' }).click();
    await saySound(page, 1, 2);
    await page.getByRole('link', { name: 'Wall 2 ·' }).click();
    await page.locator('[data-ready="true"]').waitFor();
    await page.getByRole('button', { name: 'This wall is sound' }).click();
    const address = page.url();
    const state = page.context();
    await page.close();
    const again = await state.newPage();
    await again.goto(address);
    await again.getByRole('button', { name: 'Done: the wall is sound' }).waitFor();
    await again.getByRole('link', { name: 'All walls' }).click();
    await again.getByText('✓ Done, saved on this device').waitFor();
    await again.getByText('◐ Begun, saved on this device').waitFor();
    await again.waitForLoadState('networkidle');
    await state.setOffline(true);
    await again.getByRole('button', { name: 'Hand in all 2 walls' }).click();
    await again.getByRole('button', { name: 'Hand in anyway' }).click();
    await again.getByRole('heading', { name: 'Waiting to be sent' }).waitFor();
    await again.close();
    await state.setOffline(false);
    const later = await state.newPage();
    await later.goto(`${site.address}/my-work`);
    await later.getByText('✓ Handed in.').waitFor();
    await state.close();
  });
});

describe('the key', () => {
  test('no word of it comes to a learner before the results show: 500 walls', async () => {
    const spec = {
      title: 'Many walls',
      topics: ['mixed'],
      kinds: ['plain-panel', 'window-panel', 'door-corner', 'gable-end'],
      walls: '25',
      difficulty: '2',
      rules: 'canada',
      same: 'each',
      offline: 'device',
      ...{ openingsUp: '', minutes: '', lessons: [], questionTopics: [], opensAt: '', dueAt: '' },
      ...{ zone: 'UTC', grace: '0', attempts: '1', release: 'by hand' },
      ...{ pass: false, passShare: '', passMethod: '', passPerson: '', passDate: '' },
    };
    const learner = newCaller(site);
    await learner.post('/api/join/enter', { code: joinCode, who: { name: 'Cy Two' }, pin: '4711' });
    // Names of faults as the key spells them; and the fields a finding has.
    const words = new RegExp(`${CHECKS.join('|')}|"findings"|"families"|"measured"|"margin"|secret`);
    let walls = 0;
    for (let works = 0; works < 20; works++) {
      const { work } = await answerOf(owner.post('/api/work', { ...spec, group }));
      await answerOf(owner.post('/api/work/set', { work }));
      const begun = await learner.post('/api/attempts', { work });
      const answer = await begun.text();
      const { attempt } = JSON.parse(answer) as { readonly attempt: string };
      const fetched = await Promise.all(
        Array.from({ length: 24 }, async (_, at) =>
          (await learner.get(`/api/attempts/${attempt}/walls/${at + 2}`)).text(),
        ),
      );
      const payloads = [
        answer,
        unpackedIn(await (await learner.get(`/my-work/${work}/7`)).text()),
        unpackedIn(await (await learner.get(`/my-work/${work}`)).text()),
        ...fetched,
      ];
      for (const payload of payloads) expect(words.exec(payload)?.[0]).toBe(undefined);
      // Nor a code: with it the wall could be opened by itself, key and all.
      for (const payload of payloads) expect(CODE.exec(payload)?.[0]).toBe(undefined);
      // The page brings one wall, each answer another.
      for (const payload of payloads.slice(2))
        walls += payload.match(/masonry\W+(?:anchored|adhered)/g)?.length ?? 0;
    }
    expect(walls).toBe(500);
  });
});

/** A page, and the walls that its scripts bring unpacked. A long text of theirs says before it how long it is: T, hex digits, comma. */
function unpackedIn(page: string): string {
  const brought = [...page.matchAll(/self\.__next_f\.push\(\[1,("(?:[^"\\]|\\.)*")\]\)/g)];
  const text = brought.map(([, part = '""']) => JSON.parse(part)).join('');
  const walls = [...text.matchAll(/T([0-9a-f]+),(?=H4sI)/g)].map(({ 0: { length }, 1: size = '', index }) =>
    text.slice(index + length, index + length + Number.parseInt(size, 16)),
  );
  return page + walls.map((packed) => gunzipSync(Buffer.from(packed, 'base64')).toString()).join('');
}

async function answerOf(sent: Promise<Response>): Promise<{ readonly work: string }> {
  const response = await sent;
  expect(response.status).toBe(200);
  return (await response.json()) as { readonly work: string };
}
