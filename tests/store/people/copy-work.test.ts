import { expect, test } from 'vitest';
import { templateOf } from '../../../lib/classes/templates';
import { createWork, workOf, worksOf } from '../../../lib/store/set-work';
import { KINDS } from '../databases';
import { NOON } from '../samples/sample-attempt';
import { openPeople, type PeopleSite, setUpOwner, type Visitor } from '../visitor';

async function instructor(site: PeopleSite, ada: Visitor): Promise<Visitor> {
  const { body } = await ada.post('/api/people/invite', { name: 'Bo Lath', email: 'bo@example.org' });
  const bo = site.newVisitor();
  const token = String(body.link).split('/').at(-1);
  await bo.post('/api/people/new-password', { token, password: 'five grey bricks' });
  return bo;
}

const groupOf = async (visitor: Visitor, name: string) =>
  String((await visitor.post('/api/groups', { name })).body.group);

test.each(KINDS)(
  'a copy is a draft without dates and with other walls, in a group of one’s own, on %s',
  async (kind) => {
    const site = await openPeople(kind);
    const ada = await setUpOwner(site);
    const bo = await instructor(site, ada);
    const mine = await groupOf(bo, 'Tuesday');
    const next = await groupOf(bo, 'Next year');
    const foreign = await groupOf(ada, 'Wednesday');
    const { spec, release } = templateOf(undefined);
    const draft = { title: 'Ties', spec, release, opensAt: NOON, dueAt: NOON + 1000, graceMs: 60_000 };
    const work = await createWork(site.store, mine, 'a secret', draft, { actor: 'user bo', at: NOON });

    const refused = await bo.post('/api/work/copy', { work, into: foreign });
    expect([refused.status, Object.keys(refused.body.fields ?? {})]).toEqual([422, ['into']]);
    expect(await worksOf(site.store, foreign)).toEqual([]);

    expect((await bo.post('/api/work/copy', { work, into: next })).status).toBe(200);
    const [copy] = await worksOf(site.store, next);
    const original = await workOf(site.store, work);
    expect(copy).toMatchObject({
      title: 'Ties',
      spec: original.spec,
      state: 'draft',
      opensAt: null,
      dueAt: null,
    });
    expect(copy?.graceMs).toBe(60_000);
    expect(copy?.secret).not.toBe(original.secret);
  },
);
