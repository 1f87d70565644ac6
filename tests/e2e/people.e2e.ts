import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityProblems, type Look, openBrowser, sidewaysOverflow, visit } from './browser';
import { type OwnSite, openOwnSite } from './own-site';

const PHONE = { width: 390, colours: 'light' } as const;
const DESK = { width: 1280, colours: 'light' } as const;

let browser: Browser;
let site: OwnSite;
beforeAll(async () => {
  browser = await openBrowser();
  site = await openOwnSite();
});
afterAll(async () => {
  await site?.close();
});

const open = async (path: string, look: Look = DESK) => visit(browser, path, look, site.address);

async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('main').getByRole('button', { name, exact: true }).click();
}

async function problemsOn(page: Page): Promise<string> {
  const alert = page.getByRole('main').getByRole('alert');
  await alert.waitFor();
  return (await alert.textContent()) ?? '';
}

/** What is refused is answered with 4xx, which the console reports; anything else there is a fault. */
const unexpected = (problems: readonly string[]) =>
  problems.filter((line) => !/answered 4(01|09|22)|status of 4(01|09|22)/.test(line));

describe.sequential('people, one after the other', () => {
  let link = '';
  let groupCode = '';

  test('the owner sets up the site with the code that the server printed', async () => {
    const { page, problems, close } = await open('/set-up');
    await press(page, 'Make the account');
    expect(await problemsOn(page)).toMatch(
      /There is a problem[\s\S]*Type a name\.[\s\S]*at least 12 characters/,
    );
    expect(await page.title()).toMatch(/^Error: Set up this site/);
    await page.getByLabel('Start code').fill(site.startCode);
    await page.getByLabel('Your name').fill('Ada Clay');
    await page.getByLabel('E-mail').fill('ada@example.org');
    await page.getByLabel('Password').fill('four red bricks');
    await press(page, 'Make the account');
    await page.waitForURL('**/desk');
    expect(await page.getByRole('banner').getByRole('link', { name: 'Desk' }).count()).toBe(1);

    await page.goto(`${site.address}/desk/people`);
    await page.getByLabel('Their name').fill('Ben Stone');
    await page.getByLabel('Their e-mail').fill('ben@example.org');
    await press(page, 'Make the link');
    const card = page.getByRole('region', { name: 'Link for Ben Stone' });
    link = (await card.getByText('/reset/').textContent()) ?? '';
    expect(await card.getByRole('img').getAttribute('aria-label')).toBe('QR code of the link for Ben Stone');
    await page.getByRole('heading', { name: 'Ben Stone' }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(unexpected(problems)).toEqual([]);
    await close();
  });

  test('the instructor chooses a password by the link, makes a group, signs out and in again', async () => {
    const { page, problems, close } = await open(link.replace(site.address, ''), PHONE);
    await page.getByLabel('New password').fill('passwordpassword');
    await press(page, 'Use this password');
    expect(await problemsOn(page)).toContain('one of the first that people try');
    expect(await page.getByLabel('New password').inputValue()).toBe('passwordpassword');
    await page.getByLabel('New password').fill('mortar and lime 7');
    await press(page, 'Use this password');
    await page.waitForURL('**/desk');

    const made = await page.evaluate(async () => {
      const answer = await fetch('/api/groups', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ name: 'Tuesday' }),
      });
      return answer.json();
    });
    await page.goto(`${site.address}/desk/groups/${made.group}`);
    groupCode = (await page.getByText(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/).textContent()) ?? '';

    await page.getByRole('contentinfo').getByRole('button', { name: 'Sign out' }).click();
    await page.waitForURL(`${site.address}/`);
    await page.getByRole('banner').getByRole('link', { name: 'Sign in' }).waitFor();
    await page.goto(`${site.address}/desk/groups/${made.group}`);
    expect(new URL(page.url()).pathname).toBe('/sign-in');
    await page.getByLabel('E-mail').fill('ben@example.org');
    await page.getByLabel('Password').fill('not the password');
    await press(page, 'Sign in');
    expect(await problemsOn(page)).toContain('E-mail and password do not fit together.');
    await page.getByLabel('Password').fill('mortar and lime 7');
    await press(page, 'Sign in');
    await page.waitForURL(`**/desk/groups/${made.group}`);
    expect(unexpected(problems)).toEqual([]);
    await close();
  });

  test('a learner joins on a phone, comes back with the PIN, takes the data away and deletes it', async () => {
    const { page, problems, close } = await open('/join', PHONE);
    await page.getByLabel('Code of your group').fill('ZZZZ-ZZZZ');
    await press(page, 'Go on');
    expect(await problemsOn(page)).toContain('No open group has this code.');
    expect(await page.title()).toMatch(/^Error: Your group/);
    await page.getByLabel('Code of your group').fill(groupCode.toLowerCase().replace('-', ' '));
    await press(page, 'Go on');
    await page.getByLabel('Your name').fill('Joan Hod');
    await press(page, 'Go on');
    await page.getByLabel('PIN', { exact: true }).fill('4711');
    await page.getByLabel('The same PIN again').fill('4712');
    await press(page, 'Join the group');
    expect(await problemsOn(page)).toContain('The two PINs are not the same.');
    await page.getByLabel('The same PIN again').fill('4711');
    await press(page, 'Join the group');
    await page.waitForURL('**/my-work');
    await page.getByRole('contentinfo').getByRole('button', { name: 'Sign out' }).click();
    await page.waitForURL(`${site.address}/`);

    await page.goto(`${site.address}/join/${groupCode}`);
    await page.getByRole('link', { name: 'Joan Hod' }).click();
    await page.getByRole('heading', { name: 'Your PIN, Joan Hod' }).waitFor();
    await page.getByLabel('PIN', { exact: true }).fill('1111');
    await press(page, 'Sign in');
    expect(await problemsOn(page)).toContain('Name and PIN do not fit together.');
    await page.getByLabel('PIN', { exact: true }).fill('4711');
    await press(page, 'Sign in');
    await page.waitForURL('**/my-work');

    await page.goto(`${site.address}/my-data`);
    const download = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Download my data' }).click();
    expect((await download).suggestedFilename()).toBe('my-data.json');
    await press(page, 'Delete my data');
    expect(await problemsOn(page)).toContain('Tick the box if you are sure.');
    await page.getByLabel('I am sure.').check();
    await press(page, 'Delete my data');
    await page.getByRole('status').filter({ hasText: 'Your data is deleted.' }).waitFor();
    await page.goto(`${site.address}/join/${groupCode}`);
    expect(await page.getByRole('link', { name: 'Joan Hod' }).count()).toBe(0);
    expect(unexpected(problems)).toEqual([]);
    await close();
  });

  test.each([
    '/sign-in',
    '/set-up',
    '/join',
    '/join?code=none',
    '/join/GROUP',
    '/join/GROUP?name=Ann',
    '/reset/none',
  ])('%s is in order by day on a small phone and by night at a desk', async (path) => {
    for (const look of [
      { width: 320, colours: 'light' },
      { width: 1280, colours: 'dark' },
    ] as const) {
      const { page, problems, close } = await open(path.replace('GROUP', groupCode), look);
      expect(await accessibilityProblems(page)).toEqual([]);
      expect(await sidewaysOverflow(page)).toBe(0);
      expect(problems).toEqual([]);
      await close();
    }
  });
});
