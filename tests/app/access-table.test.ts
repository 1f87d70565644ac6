import { expect, test } from 'vitest';
import { ACCESS } from '../../app/access/access-table';
import { type DiskRoute, routesOnDisk } from '../routes-on-disk';
import { filesUnder } from '../source-files';

const routes = routesOnDisk();
const rules: Readonly<Record<string, string>> = ACCESS;

/** What makes a file answer requests in Next's app folder; those not of the table need no rule of their own. */
const ANSWERS =
  /^app\/(.*\/)?(page|route|default|sitemap|robots|manifest|opengraph-image|twitter-image)\.\w+$/;

/** `guarded('POST /x'` and `requirePage('/x'`, however the line is broken. */
const guards = (text: string, call: string) =>
  [...text.matchAll(new RegExp(`\\b${call}\\(\\s*'([^']+)'`, 'g'))].map(([, route]) => route);

test('there are routes to look at', () => {
  expect(routes.length).toBeGreaterThan(30);
});

test('every route has a rule', () => {
  expect(routes.map(({ name }) => name).filter((name) => !(name in rules))).toEqual([]);
});

test('every rule has a route', () => {
  const names = routes.map(({ name }) => name);
  expect(Object.keys(rules).filter((name) => !names.includes(name))).toEqual([]);
});

test('every file that answers is a page or a route', () => {
  const others = filesUnder('app').filter(
    ({ path }) => ANSWERS.test(path) && !/\/(page\.tsx|route\.ts)$/.test(path),
  );
  expect(others.map(({ path }) => path).filter((path) => path !== 'app/page.tsx')).toEqual([]);
});

test('nothing answers past the guard: no function of the server is handed to the browser', () => {
  const actions = filesUnder('.').filter(
    ({ path, text }) =>
      /\.tsx?$/.test(path) && !path.startsWith('tests/') && /^\s*['"]use server['"]/m.test(text),
  );
  expect(actions.map(({ path }) => path)).toEqual([]);
});

/** Why a route does not keep to its rule; undefined when it does. */
function complaint({ name, text }: DiskRoute): string | undefined {
  if (name.startsWith('/')) {
    if (rules[name] === 'anyone' || guards(text, 'requirePage').includes(name)) return undefined;
    return `does not call requirePage('${name}'`;
  }
  if (name.includes(' /api/')) {
    return guards(text, 'guarded').includes(name) ? undefined : `does not stand behind guarded('${name}'`;
  }
  if (rules[name] === 'anyone' && name.startsWith('GET ')) return undefined;
  return 'is outside /api and not open to anyone, or changes something';
}

test.each(routes)('$name keeps to its rule', (route) => {
  expect(complaint(route)).toBe(undefined);
});

test.each([
  ['/desk/x', 'export default function Page() { return null }', /requirePage/],
  ['/desk', "await requirePage('/sign-in')", /requirePage/],
  ['POST /api/x', "export const POST = guarded('POST /api/y', f)", /guarded/],
  ['GET /api/x', 'export const GET = () => new Response()', /guarded/],
  ['POST /feed', 'export const POST = () => new Response()', /outside/],
])('%s is told off for %s', (name, text, words) => {
  expect(complaint({ name, text, file: 'app/x' })).toMatch(words);
});
