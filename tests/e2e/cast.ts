import type { RoleName } from '../access-matrix';
import type { OwnSite } from './own-site';

/** One person's browser, as far as HTTP goes. */
export interface Caller {
  readonly get: (path: string) => Promise<Response>;
  readonly post: (path: string, body: unknown) => Promise<Response>;
}

export interface Cast {
  readonly people: Readonly<Record<RoleName, Caller>>;
  /** Of the group that `lead` and `co-instructor` teach and `learner` and `class-mate` are in. */
  readonly group: string;
  readonly joinCode: string;
  readonly work: string;
  readonly learner: string;
  /** Of `learner`. */
  readonly attempt: string;
}

const PASSWORD = 'lime putty in a tub';

/** What an instructor fills in to set one easy wall. */
export const WORK = {
  title: 'First walls',
  topics: ['joints'],
  kinds: ['plain-panel'],
  walls: '1',
  difficulty: '1',
  rules: 'canada',
  same: 'each',
  offline: 'device',
  openingsUp: '',
  minutes: '',
  lessons: [],
  questionTopics: [],
  opensAt: '',
  dueAt: '',
  zone: 'America/Toronto',
  grace: '0',
  attempts: '1',
  release: 'by hand',
  pass: false,
  passShare: '',
  passMethod: '',
  passPerson: '',
  passDate: '',
};

export function newCaller({ address }: OwnSite): Caller {
  const cookies = new Map<string, string>();
  const ask = async (path: string, init: RequestInit) => {
    const cookie = [...cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const answer = await fetch(address + path, {
      ...init,
      redirect: 'manual',
      headers: { ...init.headers, ...(cookie ? { cookie } : {}) },
    });
    for (const line of answer.headers.getSetCookie()) {
      const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? [];
      if (value === '') cookies.delete(name);
      else cookies.set(name, value);
    }
    return answer;
  };
  return {
    get: (path) => ask(path, {}),
    post: (path, body) =>
      ask(path, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'sec-fetch-site': 'same-origin' },
        body: JSON.stringify(body),
      }),
  };
}

/** Everybody of the matrix, made through the site's own doors. */
export async function makeCast(site: OwnSite): Promise<Cast> {
  const owner = newCaller(site);
  await done(
    owner.post('/api/people/set-up', {
      code: site.startCode,
      name: 'Olive Owner',
      email: 'olive@example.org',
      password: PASSWORD,
    }),
  );
  const lead = await instructor(site, owner, 'Lee Lead');
  const co = await instructor(site, owner, 'Cob Co');
  const other = await instructor(site, owner, 'Otto Other');
  const { group } = await done(lead.post('/api/groups', { name: 'Tuesday' }));
  const { group: otherGroup } = await done(other.post('/api/groups', { name: 'Friday' }));
  await done(lead.post('/api/people/co-instructor', { group, email: 'cob@example.org', part: 'co' }));
  const { work } = await done(lead.post('/api/work', { ...WORK, group }));
  await done(lead.post('/api/work/set', { work }));
  const joinCode = await codeOf(lead, group);
  const learner = await learnerIn(site, joinCode, 'Joan');
  const { attempt } = await done(learner.post('/api/attempts', { work }));
  return {
    people: {
      nobody: newCaller(site),
      owner,
      lead,
      'co-instructor': co,
      'other instructor': other,
      learner,
      'class-mate': await learnerIn(site, joinCode, 'Maud'),
      'learner of another group': await learnerIn(site, await codeOf(other, otherGroup), 'Far'),
    },
    group,
    joinCode,
    work,
    learner: await idOf(lead, joinCode, 'Joan'),
    attempt,
  };
}

async function instructor(site: OwnSite, owner: Caller, name: string): Promise<Caller> {
  const email = `${name.split(' ')[0]?.toLowerCase()}@example.org`;
  const { link } = await done(owner.post('/api/people/invite', { name, email }));
  const caller = newCaller(site);
  await done(caller.post('/api/people/new-password', { token: link.split('/').at(-1), password: PASSWORD }));
  return caller;
}

export async function learnerIn(site: OwnSite, code: string, name: string): Promise<Caller> {
  const caller = newCaller(site);
  await done(caller.post('/api/join/enter', { code, who: { name }, pin: '4711' }));
  return caller;
}

/** As it stands on the group's page. */
async function codeOf(caller: Caller, group: string): Promise<string> {
  const page = await (await caller.get(`/desk/groups/${group}`)).text();
  return />([0-9A-Z]{4}-[0-9A-Z]{4})</.exec(page)?.[1] ?? '';
}

/** As the page where learners choose their name links to it. */
async function idOf(caller: Caller, joinCode: string, name: string): Promise<string> {
  const page = await (await caller.get(`/join/${joinCode}`)).text();
  return new RegExp(`as=([0-9a-f-]{36})">${name}<`).exec(page)?.[1] ?? '';
}

interface Made {
  readonly group: string;
  readonly work: string;
  readonly attempt: string;
  readonly link: string;
}

/** What an answer made; only what that handler gives is there. */
export async function done(sent: Promise<Response>): Promise<Made> {
  const answer = await sent;
  const body = (await answer.json()) as Made;
  if (!answer.ok) throw new Error(`${answer.url} answered ${answer.status}: ${JSON.stringify(body)}`);
  return body;
}
