import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ACCESS } from '../../app/access/access-table';
import {
  expectedOutcome,
  type NamedName,
  type Outcome,
  ROLES,
  type RoleName,
  type RuleName,
} from '../access-matrix';
import { routesOnDisk } from '../routes-on-disk';
import { type Cast, makeCast } from './cast';
import { type OwnSite, openOwnSite } from './own-site';

const rules: Readonly<Record<string, RuleName>> = ACCESS;

/** What the guard says to somebody whose record it is not; a handler may have other reasons for 404. */
const NOT_THEIRS = 'There is no such thing here, or it is not yours.';

/** Pages of the group first: some handlers change what they are asked about. Signing out comes last. */
const routes = routesOnDisk()
  .map(({ name }) => name)
  .sort((a, b) => weight(a) - weight(b));

function weight(route: string): number {
  if (route.includes('sign-out')) return 3;
  return route.startsWith('POST') ? 2 : 1;
}

let site: OwnSite;
let cast: Cast;
beforeAll(async () => {
  site = await openOwnSite();
  cast = await makeCast(site);
});
afterAll(() => site?.close());

/** A value that exists for each part in square brackets. */
function filled(route: string): string {
  const values: Readonly<Record<string, string>> = {
    group: cast.group,
    work: cast.work,
    learner: cast.learner,
    attempt: cast.attempt,
    place: '1',
    code: route.startsWith('/join') ? cast.joinCode : 'AAA-AAAA-AAA',
    slug: 'full-joints',
    term: 'tie',
    name: 'mortar-spread',
    rules: 'canada',
    topic: 'joints',
    picture: 'none.svg',
    token: 'none',
    file: 'results.csv',
  };
  return route.replaceAll(/\[(\w+)\]/g, (_, part: string) => {
    const value = values[part];
    if (value === undefined) throw new Error(`${route}: say what [${part}] may be`);
    return value;
  });
}

/** Which records a request names: those of its address; a body names all four. */
function namedBy(route: string): NamedName {
  if (route.startsWith('POST')) return 'their attempt';
  if (route.includes('[attempt]')) return 'their attempt';
  if (route.includes('[learner]')) return 'their learner';
  if (route.includes('[work]')) return 'their set work';
  return route.includes('[group]') ? 'their group' : 'nothing';
}

async function outcomeOf(route: string, role: RoleName): Promise<Outcome | string> {
  const caller = cast.people[role];
  const [method, path = route] = route.includes(' ') ? route.split(' ') : ['PAGE', route];
  const { group, work, learner, attempt } = cast;
  const answer =
    method === 'POST'
      ? await caller.post(filled(path), { group, work, learner, attempt })
      : await caller.get(filled(path));
  if (answer.status >= 500) return `answered ${answer.status}`;
  if (answer.status === 401) return route.includes('/sign-in') ? 'pass' : 'sign in';
  const to = answer.headers.get('location') ?? '';
  if (answer.status === 307) return /\/(sign-in|join)(\?|$)/.test(to) ? 'sign in' : 'pass';
  if (answer.status !== 404) return 'pass';
  if (rules[route] === 'anyone') return 'pass';
  return method === 'PAGE' || (await answer.text()).includes(NOT_THEIRS) ? 'not theirs' : 'pass';
}

describe('every route, called as everybody', () => {
  test.each(routes)('%s', async (route) => {
    const rule = rules[route] ?? 'anyone';
    const found: Record<string, string> = {};
    for (const role of ROLES) found[role] = await outcomeOf(route, role);
    const expected = Object.fromEntries(
      ROLES.map((role) => [role, expectedOutcome(namedBy(route), rule, role)]),
    );
    expect(found).toEqual(expected);
  });
});
