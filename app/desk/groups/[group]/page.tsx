import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { QrCode } from '../../../../components/desk/qr-code';
import { RosterForm } from '../../../../components/desk/roster-form';
import { When } from '../../../../components/time/when';
import { PostForm } from '../../../../components/ui/post-form';
import { type DeletedWork, deletedWorks, type GroupRow, groupOf } from '../../../../lib/store/groups/groups';
import { type NamedLearner, rosterWithPins, takenOff } from '../../../../lib/store/groups/roster';
import { partIn } from '../../../../lib/store/record-owner';
import { type WorkInGroup, worksOf } from '../../../../lib/store/set-work';
import { requirePage } from '../../../access/require-page';
import { qrPath } from '../../../accounts/qr-path';
import { siteAddress } from '../../../request/address';
import styles from '../../desk.module.css';
import { nextSteps } from '../../next-steps';
import { Roster } from './roster';

export const metadata: Metadata = { title: 'Group' };

interface Props {
  readonly params: Promise<{ readonly group: string }>;
}

export default async function GroupPage({ params }: Props) {
  const {
    params: { group: id = '' },
    person,
    store,
  } = await requirePage('/desk/groups/[group]', params);
  const at = Date.now();
  const [group, roster, removed, deleted, works] = await Promise.all([
    groupOf(store, id),
    rosterWithPins(store, id, at),
    takenOff(store, id),
    deletedWorks(store, id),
    worksOf(store, id),
  ]);
  const isOpen = group.closedAt === null;
  const leads = person.kind === 'owner' || (await partIn(store.db, id, person.userId)) === 'lead';
  const steps = nextSteps({ group: { ...group, learners: roster.length }, works }, at);
  const join = `${siteAddress(await headers())}/join/${group.joinCode}`;
  return (
    <div className={styles.page}>
      <p className="links">
        <a className="link" href="/desk">
          Desk
        </a>
        <a className="link" href={`/desk/groups/${id}/book`}>
          Mark book
        </a>
        {leads && (
          <a className="link" href={`/desk/groups/${id}/instructors`}>
            Instructors
          </a>
        )}
      </p>
      <h1>{group.name}</h1>
      {!isOpen && <p>This group is closed. Nobody can join or start new work. What was handed in stays.</p>}
      {steps.length > 0 && (
        <ul className={styles.steps} aria-label="What to do next">
          {steps.map(({ words, href }) => (
            <li key={words}>
              <a className="link" href={href}>
                {words}
              </a>
            </li>
          ))}
        </ul>
      )}
      <h2>Set work</h2>
      {isOpen && (
        <p>
          <a className="button" href={`/desk/groups/${id}/set`}>
            Set new work
          </a>
        </p>
      )}
      <ul>
        {works.map((work) => (
          <li key={work.id}>
            <a className="link" href={`/desk/work/${work.id}`}>
              {work.title}
            </a>{' '}
            · <WorkWords work={work} of={roster.length} />
          </li>
        ))}
      </ul>
      {isOpen && (
        <>
          <h2>Join</h2>
          <div className="bar panel">
            <div>
              <p>Learners go to {join.replace(/\/join\/.*/, '/join')} and type</p>
              <p className={styles.code}>{group.joinCode}</p>
            </div>
            <QrCode qr={qrPath(join)} label={`QR code to join ${group.name}`} />
          </div>
          <Joining group={group} />
        </>
      )}
      <h2>Roster ({roster.length})</h2>
      <Roster learners={roster} />
      <Removed learners={removed} />
      <Deleted works={deleted} />
      {isOpen && (
        <>
          <h2>Add learners</h2>
          <RosterForm group={id} />
          <details className="disclosure">
            <summary>Remove made-up names</summary>
            <p className="column">
              Has somebody joined under made-up names? This removes everybody who typed in their own name
              during the last hour. Names that were on the roster before stay. If a real learner is among
              them, put them back: their work is kept.
            </p>
            <PostForm
              action="/api/groups/undo-joins"
              send="Remove them"
              name="Remove everybody who joined during the last hour"
              also={{ group: id }}
              plain
            />
          </details>
        </>
      )}
      {!isOpen && leads && (
        <PostForm action="/api/groups/reopen" send="Open this group again" also={{ group: id }} plain />
      )}
      {isOpen && leads && (
        <>
          <h2>End of the year</h2>
          <details className="disclosure">
            <summary>Close the group</summary>
            <p className="column">
              Nobody can join any more, and nobody can start new work. The mark book stays. You can open the
              group again.
            </p>
            <PostForm action="/api/groups/close" send="Close this group" also={{ group: id }} plain />
          </details>
        </>
      )}
    </div>
  );
}

/** Whom the code lets in, and a new code. */
function Joining({ group: { id, takesNew } }: { readonly group: Omit<GroupRow, 'learners'> }) {
  return (
    <details className="disclosure">
      <summary>
        {takesNew
          ? 'Anybody with this code can add their name'
          : 'Only names on the roster get in with this code'}
      </summary>
      <PostForm
        action="/api/groups/joining"
        send={takesNew ? 'Let in only names on the roster' : 'Let new names join again'}
        name="Who may join"
        also={{ group: id, takesNew: !takesNew }}
        plain
      />
      <p className="column">
        Has the code got out? With a new one, the old code stops working. Learners who are signed in stay
        signed in.
      </p>
      <PostForm
        action="/api/groups/join-code"
        send="Make a new code"
        name="New code"
        also={{ group: id }}
        done="The new code is above."
        plain
      />
    </details>
  );
}

function Removed({ learners }: { readonly learners: readonly NamedLearner[] }) {
  if (learners.length === 0) return null;
  return (
    <details className="disclosure">
      <summary>Removed from the group ({learners.length})</summary>
      <ul>
        {learners.map(({ id, name }) => (
          <li key={id}>
            {name}
            <PostForm
              action="/api/groups/put-back"
              send="Put back"
              name={`Put ${name} back`}
              also={{ learner: id }}
              plain
            />
          </li>
        ))}
      </ul>
    </details>
  );
}

function Deleted({ works }: { readonly works: readonly DeletedWork[] }) {
  if (works.length === 0) return null;
  return (
    <details className="disclosure">
      <summary>Deleted by learners ({works.length})</summary>
      <ul>
        {works.map(({ id, name, title, handedInAt, deletedAt }) => (
          <li key={id}>
            {name} deleted all their data on <When at={deletedAt} />. “{title}” had been handed in on{' '}
            <When at={handedInAt} />.
          </li>
        ))}
      </ul>
    </details>
  );
}

function WorkWords({ work, of }: { readonly work: WorkInGroup; readonly of: number }) {
  if (work.state === 'draft') return <>draft, not set yet</>;
  return (
    <>
      {work.state === 'closed' ? 'closed' : 'set'}
      {work.dueAt !== null && (
        <>
          , due <When at={work.dueAt} />
        </>
      )}
      , {work.handedIn} of {of} handed in
    </>
  );
}
