import type { Metadata } from 'next';
import { When } from '../../components/time/when';
import { TextField } from '../../components/ui/fields';
import { PostForm } from '../../components/ui/post-form';
import { groupsFor } from '../../lib/store/groups/groups';
import { worksOf } from '../../lib/store/set-work';
import { requirePage } from '../access/require-page';
import { RefusedTries } from '../accounts/refused-tries';
import { accountKey } from '../accounts/sessions';
import styles from './desk.module.css';
import { dueNext, type GroupAtDesk, nextSteps } from './next-steps';

export const metadata: Metadata = { title: 'Desk' };

/** For how long after signing in somebody is told at the desk that others tried; their account page tells it for longer. */
const JUST_SIGNED_IN_MS = 60 * 60_000;

export default async function DeskPage() {
  const { person, store } = await requirePage('/desk');
  const rows = await groupsFor(store, person.kind === 'owner' ? null : person.userId);
  const groups: readonly GroupAtDesk[] = await Promise.all(
    rows.map(async (group) => ({ group, works: await worksOf(store, group.id) })),
  );
  const at = Date.now();
  const steps = groups.flatMap((each) =>
    nextSteps(each, at).map((step) => ({ ...step, group: each.group.name })),
  );
  const due = dueNext(groups, at);
  return (
    <div className={styles.page}>
      {person.kind === 'owner' && (
        <p>
          <a className="link" href="/desk/people">
            People: invite instructors, new password links
          </a>
        </p>
      )}
      <h1>Desk</h1>
      {at - person.session.begun < JUST_SIGNED_IN_MS && (
        <RefusedTries db={store.db} of={accountKey(person.email)}>
          If that was not you, <a href="/desk/account">look at your account</a>.
        </RefusedTries>
      )}
      {steps.length > 0 && (
        <section aria-labelledby="next">
          <h2 id="next">What to do next</h2>
          <ul className={styles.steps}>
            {steps.map(({ words, href, group }) => (
              <li key={`${group} ${words}`}>
                <a className="link" href={href}>
                  {group}: {words}
                </a>
              </li>
            ))}
          </ul>
        </section>
      )}
      {due.length > 0 && (
        <section aria-labelledby="due">
          <h2 id="due">Due</h2>
          <ul>
            {due.map(({ id, title, dueAt, groupName, handedIn, of }) => (
              <li key={id}>
                <a className="link" href={`/desk/work/${id}`}>
                  {title}
                </a>{' '}
                · {groupName} · {dueAt !== null && <When at={dueAt} />} · {handedIn} of {of} handed in
              </li>
            ))}
          </ul>
        </section>
      )}
      <h2>Groups</h2>
      <ul className={`cards ${styles.cards}`}>
        {groups.map(({ group, works }) => (
          <li key={group.id}>
            <h3>
              <a className="link" href={`/desk/groups/${group.id}`}>
                {group.name}
              </a>
            </h3>
            <p className={styles.soft}>
              {group.learners === 1 ? '1 learner' : `${group.learners} learners`} ·{' '}
              {works.length === 1 ? '1 set work' : `${works.length} set works`}
              {group.closedAt !== null && ' · closed'}
            </p>
          </li>
        ))}
      </ul>
      <h2>A new group</h2>
      <PostForm action="/api/groups" send="Make the group" name="A new group">
        <TextField
          name="name"
          label="Name of the group"
          help="For instance: Tuesday, first year."
          most={60}
        />
      </PostForm>
    </div>
  );
}
