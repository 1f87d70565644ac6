import type { Metadata } from 'next';
import { headers } from 'next/headers';
import { QrCode } from '../../../../components/desk/qr-code';
import { RosterForm } from '../../../../components/desk/roster-form';
import { When } from '../../../../components/time/when';
import { PostForm } from '../../../../components/ui/post-form';
import { groupOf, rosterWithPins } from '../../../../lib/store/groups';
import { partIn } from '../../../../lib/store/record-owner';
import { type WorkInGroup, worksOf } from '../../../../lib/store/set-work';
import { requirePage } from '../../../access/guard';
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
  const [group, roster, works] = await Promise.all([
    groupOf(store, id),
    rosterWithPins(store, id),
    worksOf(store, id),
  ]);
  const isOpen = group.closedAt === null;
  const leads = person.kind === 'owner' || (await partIn(store.db, id, person.userId)) === 'lead';
  const steps = nextSteps({ group: { ...group, learners: roster.length }, works }, Date.now());
  const join = `${siteAddress(await headers())}/join/${group.joinCode}`;
  return (
    <div className={styles.page}>
      <p className={styles.links}>
        <a className={styles.link} href="/desk">
          Desk
        </a>
        <a className={styles.link} href={`/desk/groups/${id}/book`}>
          Mark book
        </a>
        {leads && (
          <a className={styles.link} href={`/desk/groups/${id}/instructors`}>
            Instructors
          </a>
        )}
      </p>
      <h1>{group.name}</h1>
      {!isOpen && (
        <p>This group is closed. Nobody joins, and nothing new is begun. What was handed in stays.</p>
      )}
      {steps.length > 0 && (
        <ul className={styles.steps} aria-label="What to do next">
          {steps.map(({ words, href }) => (
            <li key={words}>
              <a className={styles.link} href={href}>
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
            <a className={styles.link} href={`/desk/work/${work.id}`}>
              {work.title}
            </a>{' '}
            · <WorkWords work={work} of={roster.length} />
          </li>
        ))}
      </ul>
      {isOpen && (
        <>
          <h2>Join</h2>
          <div className={styles.join}>
            <div>
              <p>Learners go to {join.replace(/\/join\/.*/, '/join')} and type</p>
              <p className={styles.code}>{group.joinCode}</p>
            </div>
            <QrCode qr={qrPath(join)} label={`QR code to join ${group.name}`} />
          </div>
        </>
      )}
      <h2>Roster ({roster.length})</h2>
      <Roster learners={roster} />
      {isOpen && (
        <>
          <h2>Add learners</h2>
          <RosterForm group={id} />
          <details className={styles.key}>
            <summary>Names that are nobody’s</summary>
            <p className={styles.text}>
              Has somebody joined under made-up names? This takes off everybody who typed their own name
              within the last hour; names that were on the roster before stay. A real learner among them comes
              back, with the work they had, when you add their name above.
            </p>
            <PostForm
              action="/api/groups/undo-joins"
              then="reload"
              send="Take them off"
              name="Take off who joined within the last hour"
              also={{ group: id }}
              plain
            />
          </details>
        </>
      )}
      {isOpen && leads && (
        <>
          <h2>At the end</h2>
          <details className="disclosure">
            <summary>Close the group</summary>
            <p className={styles.text}>
              Do this at the end of a year. Nobody joins any more and nothing new is begun. The mark book
              stays. It cannot be opened again.
            </p>
            <PostForm
              action="/api/groups/close"
              then="reload"
              send="Close this group"
              also={{ group: id }}
              plain
            />
          </details>
        </>
      )}
    </div>
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
