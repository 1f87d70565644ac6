import { describe, expect, test } from 'vitest';
import { authorize, namedIn } from '../../app/access/authorize';
import type { Person } from '../../app/accounts/people';
import type { NamedRecords } from '../../lib/store/record-owner';
import { expectedOutcome, NAMED, type NamedName, ROLES, type RoleName, RULES } from '../access-matrix';
import { KINDS, ownDatabase, readyStore } from './databases';
import { NOON, type SampleAttempt, sampleAttempt } from './samples/sample-attempt';

const HERE = { id: 'here', begun: 0 };

describe.each(KINDS)('who passes which rule, on %s', (kind) => {
  test('the whole matrix', async () => {
    const store = await readyStore(await ownDatabase(kind));
    const own = await sampleAttempt(store);
    const mate = await sampleAttempt(store, own);
    const other = await sampleAttempt(store);
    for (const id of ['ada', 'lee', 'cob', 'far']) {
      await store.db
        .insertInto('user')
        .values({
          id,
          name: id,
          email: `${id}@example.org`,
          emailVerified: kind === 'postgres' ? false : 0,
          image: null,
          createdAt: new Date(NOON).toISOString(),
          updatedAt: new Date(NOON).toISOString(),
          role: id === 'ada' ? 'owner' : 'instructor',
        })
        .execute();
    }
    await store.db
      .insertInto('group_instructor')
      .values([
        { group_id: own.group, user_id: 'lee', part: 'lead' },
        { group_id: own.group, user_id: 'cob', part: 'co' },
        { group_id: other.group, user_id: 'far', part: 'lead' },
      ])
      .execute();
    const people: Readonly<Record<RoleName, Person>> = {
      nobody: { kind: 'nobody' },
      owner: { kind: 'owner', userId: 'ada', name: 'Ada', email: 'ada@example.org', session: HERE },
      lead: { kind: 'instructor', userId: 'lee', name: 'Lee', email: 'lee@example.org', session: HERE },
      'co-instructor': {
        kind: 'instructor',
        userId: 'cob',
        name: 'Cob',
        email: 'cob@example.org',
        session: HERE,
      },
      'other instructor': {
        kind: 'instructor',
        userId: 'far',
        name: 'Far',
        email: 'far@example.org',
        session: HERE,
      },
      learner: learnerOf(own),
      'class-mate': learnerOf(mate),
      'learner of another group': learnerOf(other),
    };
    const named: Readonly<Record<NamedName, NamedRecords>> = {
      nothing: {},
      'their group': { group: own.group },
      'their set work': { work: own.work },
      'their learner': { learner: own.learner },
      'their attempt': { attempt: own.attempt },
      'their group, and an attempt of another': { group: own.group, attempt: other.attempt },
      'a group that is not there': { group: '00000000-0000-4000-8000-000000000000' },
    };
    for (const records of NAMED) {
      for (const rule of RULES) {
        for (const role of ROLES) {
          const found = await authorize(store.db, rule, people[role], named[records]);
          expect([records, rule, role, found]).toEqual([
            records,
            rule,
            role,
            expectedOutcome(records, rule, role),
          ]);
        }
      }
    }
  });
});

function learnerOf({ learner, group }: SampleAttempt): Person {
  return { kind: 'learner', learnerId: learner, groupId: group, name: 'Joan', tokenHash: '' };
}

test.each([
  ['a part of the address', [{ group: 'a' }, undefined], { group: 'a' }],
  ['a field of the body', [{}, { group: 'a', title: 'b' }], { group: 'a' }],
  ['the same said twice', [{ group: 'a' }, { group: 'a' }], { group: 'a' }],
  ['two that differ: nobody has it', [{ group: 'a' }, { group: 'b' }], { group: '' }],
  [
    'two that differ and a third like the second',
    [{ group: 'a' }, { group: 'b' }, { group: 'b' }],
    { group: '' },
  ],
  ['a list', [{}, { group: ['a'] }], { group: '' }],
  ['a number', [{}, { learner: 7 }], { learner: '' }],
  ['nothing in a list of fields', [{}, ['group']], {}],
  ['what is inherited', [{}, JSON.parse('{"__proto__":{"group":"a"}}')], {}],
])('records named: %s', (_, sources, named) => {
  expect(namedIn(...sources)).toEqual(named);
});
