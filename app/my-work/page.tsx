import type { Metadata } from 'next';
import Link from 'next/link';
import { OutboxWatch } from '../../components/hand-in/outbox-watch';
import { When } from '../../components/time/when';
import { isShown } from '../../lib/classes/release';
import { type LearnerWork, workForLearner } from '../../lib/store/attempts';
import { requirePage } from '../access/require-page';
import styles from './my-work.module.css';

export const metadata: Metadata = { title: 'My work' };

export default async function MyWorkPage() {
  const { person, store } = await requirePage('/my-work');
  const works = await workForLearner(store, person.groupId, person.learnerId);
  const at = Date.now();
  return (
    <div className={styles.page}>
      <h1>My work</h1>
      <p>
        You are {person.name}. <a href="/my-data">Your data</a>
      </p>
      <OutboxWatch learner={person.learnerId} />
      {works.length === 0 && (
        <p>Nothing is set yet. Ask your instructor, or practise on any wall in the meantime.</p>
      )}
      <ul className={styles.works}>
        {works.map((each) => (
          <li key={each.work.id}>
            <h2>
              <Link prefetch={false} className="link" href={`/my-work/${each.work.id}`}>
                {each.work.title}
              </Link>
            </h2>
            <p>{stateWords(each, at)}</p>
            {each.work.dueAt !== null && (
              <p>
                Due <When at={each.work.dueAt} />
              </p>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** How far it is, by what the site knows: what waits on a device is shown in the work itself. */
function stateWords({ work, attempts }: LearnerWork, at: number): string {
  const last = attempts.at(-1);
  if (last?.state === 'open') return '◐ Begun. Not handed in yet.';
  if (last)
    return isShown(work, at) || last.state === 'released'
      ? '✓ Handed in. The result is out.'
      : '✓ Handed in.';
  if (work.state === 'closed') return 'Closed.';
  if (work.opensAt !== null && at < work.opensAt) return 'Not open yet.';
  return `○ Not begun. ${work.spec.walls === 1 ? '1 wall' : `${work.spec.walls} walls`}.`;
}
