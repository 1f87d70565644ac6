import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keyOf, totpOf } from '../accounts/totp';
import { accessibilityProblems, LOOKS, openBrowser, sidewaysOverflow, visit } from './browser';
import { type Caller, done, newCaller } from './cast';
import { type OwnSite, openOwnSite } from './own-site';

const PASSWORD = 'lime putty in a tub';
const STEP_MS = 30_000;

let browser: Browser;
let site: OwnSite;
let owner: Caller;
beforeAll(async () => {
  browser = await openBrowser();
  site = await openOwnSite();
  owner = newCaller(site);
  const ada = { name: 'Ada Clay', email: 'ada@example.org', password: PASSWORD };
  await done(owner.post('/api/people/set-up', { code: site.startCode, ...ada }));
});
afterAll(async () => {
  await site?.close();
});

async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('main').getByRole('button', { name, exact: true }).click();
}

async function isInOrder(page: Page): Promise<void> {
  expect(await accessibilityProblems(page)).toEqual([]);
  expect(await sidewaysOverflow(page)).toBe(0);
}

/** As far as the page that asks for the second step. */
async function signInAgain(page: Page, email: string): Promise<void> {
  await page.getByRole('contentinfo').getByRole('button', { name: 'Sign out' }).click();
  await page.waitForURL(`${site.address}/`);
  await page.goto(`${site.address}/sign-in`);
  await page.getByLabel('E-mail').fill(email);
  await page.getByLabel('Password').fill(PASSWORD);
  await press(page, 'Sign in');
  await page.waitForURL('**/sign-in/code*');
}

test.each(LOOKS)(
  'at $width px, $colours: a second step is set up and taken, a lost phone made up for, another session ended',
  async (look) => {
    const email = `ben${look.width}@example.org`;
    const { link } = await done(owner.post('/api/people/invite', { name: 'Ben Stone', email }));
    const { page, problems, close } = await visit(browser, new URL(link).pathname, look, site.address);
    await page.getByLabel('New password').fill(PASSWORD);
    await press(page, 'Use this password');
    await page.waitForURL('**/desk');
    await page.waitForLoadState('networkidle');
    await page.getByRole('contentinfo').getByRole('link', { name: 'Your account' }).click();
    await page.waitForURL('**/desk/account');

    const setUp = page.getByRole('form', { name: 'Set up the second step' });
    await setUp.getByLabel('Your password').fill(PASSWORD);
    await press(page, 'Set up the second step');
    const card = page.getByRole('region', { name: 'Set up the second step' });
    await card.getByRole('img', { name: 'QR code of the key for the app' }).waitFor();
    await isInOrder(page);
    const key = keyOf((await card.getByText(/^([A-Z2-7]{1,4} ?)+$/).textContent()) ?? '');
    await card.getByLabel('Code from the app').fill(totpOf(key, Date.now()));
    await press(page, 'Turn it on');
    const recovery = page.getByRole('region', { name: 'Recovery codes' });
    await recovery.waitFor();
    const codes = await recovery.getByRole('listitem').allTextContents();
    expect(codes).toHaveLength(10);
    await isInOrder(page);
    await recovery.getByRole('link', { name: 'I have saved them' }).click();
    await page.getByText('You have 10 recovery codes left.').waitFor();

    await signInAgain(page, email);
    await isInOrder(page);
    await page.getByLabel('Code from the app').fill('12');
    await press(page, 'Sign in');
    await page.getByRole('main').getByRole('alert').filter({ hasText: 'This code does not fit' }).waitFor();
    // The next one: the phone may be a little ahead, and the one before was used.
    await page.getByLabel('Code from the app').fill(totpOf(key, Date.now() + STEP_MS));
    await press(page, 'Sign in');
    await page.waitForURL('**/desk');
    await page.getByText('There was 1 failed try to sign in as you since you last signed in').waitFor();

    await signInAgain(page, email);
    await page.getByText('Use a recovery code').click();
    await page.getByRole('textbox', { name: 'Recovery code' }).fill(codes[0] ?? '');
    await press(page, 'Sign in with it');
    await page.waitForURL('**/desk');

    const elsewhere = newCaller(site);
    await done(elsewhere.post('/api/people/sign-in', { email, password: PASSWORD }));
    await done(elsewhere.post('/api/people/sign-in-code', { code: codes[1] }));
    expect((await elsewhere.get('/desk')).status).toBe(200);
    await page.goto(`${site.address}/desk/account`);
    await page.getByText('You have 8 recovery codes left.').waitFor();
    await page.getByText('Chrome on Linux, this one').waitFor();
    await page.getByText('Password', { exact: true }).click();
    await isInOrder(page);
    await page.getByText('New recovery codes', { exact: true }).click();
    const renewal = page.getByRole('form', { name: 'New recovery codes' });
    await renewal.getByLabel('Your password').fill(PASSWORD);
    await isInOrder(page);
    await press(page, 'Make new recovery codes');
    await recovery.getByText('The old codes no longer work.').waitFor();
    expect(await recovery.getByRole('listitem').count()).toBe(10);
    await isInOrder(page);
    await recovery.getByRole('link', { name: 'I have saved them' }).click();
    await page.getByText('You have 10 recovery codes left.').waitFor();
    await press(page, 'Sign out there');
    await page.getByRole('button', { name: 'Sign out there' }).waitFor({ state: 'detached' });
    expect((await elsewhere.get('/desk')).status).toBe(307);

    expect(problems.filter((line) => !/answered 422|status of 422/.test(line))).toEqual([]);
    await close();
  },
);
