import { notFound } from 'next/navigation';
import { When } from '../../components/time/when';
import { PostForm } from '../../components/ui/post-form';
import { briefOfCode } from '../../lib/exercise/brief-of-code';
import type { AttemptWall } from '../../lib/store/attempts';
import type { Store } from '../../lib/store/database';
import { KIND_TITLES } from '../../lib/wall-page/brief-words';
import type { Learner } from '../accounts/people';
import { readLessons } from '../lessons/read-lessons';
import { sentWall } from '../server/site-walls';
import { type WorkToSee, workToSee } from './learner-work';
import styles from './my-work.module.css';
import { RelatedReading } from './related-reading';
import { ResultSection } from './result-section';
import type { RoomWall } from './use-walls';
import { WorkRoom } from './work-room';

/** A set work as its learner sees it: what it is, the way to begin, the walls, and the result once it is shown. */
export async function WorkPage(props: {
  /** From requirePage, which the page itself has to ask: tests/app/access-table.test.ts looks there. */
  readonly person: Learner;
  readonly params: Readonly<Record<string, string>>;
  readonly store: Store;
  readonly place: number | null;
}) {
  const { person, params, store } = props;
  const seen = await workToSee(store, params.work ?? '', person.learnerId, Date.now());
  if (!seen) notFound();
  const { work, open, result } = seen;
  // A wall by itself is shown with its result; before that there is nothing to show of it.
  const place = result ? props.place : null;
  const walls = open?.walls.flatMap((wall) =>
    roomWall(wall, work.spec.offline, wall.place === (props.place ?? 1)),
  );
  const gone = open !== null && walls?.length !== open.walls.length;
  return (
    <div className={open || place !== null ? styles.room : styles.page}>
      <p>
        <a href="/my-work">My work</a>
      </p>
      <h1>{work.title}</h1>
      {gone && (
        <p role="status">
          The walls of this attempt were laid by a newer version of this site than the one that runs now. They
          cannot be shown. Tell your instructor, who can ask for the newer version.
        </p>
      )}
      {open && walls && !gone ? (
        <WorkRoom
          attempt={open.attempt.id}
          learner={person.learnerId}
          walls={walls}
          offline={work.spec.offline}
          openingsUp={work.spec.openingsUp}
          endsAt={open.endsAt}
          first={props.place}
        >
          <About seen={seen} />
        </WorkRoom>
      ) : (
        <>
          {place === null && <About seen={seen} />}
          {place === null && <RelatedReading spec={work.spec} lessons={await readLessons()} />}
          <Handed seen={seen} />
          {result && <ResultSection work={work} result={result} place={place} />}
          {place === null && <Begin seen={seen} />}
        </>
      )}
    </div>
  );
}

/** The page brings the wall that it opens at, as it is kept; it fetches the others. None where this site cannot read the code. */
function roomWall(
  { place, code, fingerprint }: AttemptWall,
  offline: boolean,
  isFirst: boolean,
): readonly RoomWall[] {
  const brief = briefOfCode(code);
  if (!brief) return [];
  const packed = (isFirst && sentWall(code, offline)?.toString('base64')) || null;
  return [{ place, fingerprint, packed, kind: KIND_TITLES[brief.kind] }];
}

function About({ seen: { work, open, attempts } }: { readonly seen: WorkToSee }) {
  const { spec } = work;
  return (
    <dl className={styles.facts}>
      <dt>Walls</dt>
      <dd>{spec.walls}</dd>
      {work.opensAt !== null && attempts.length === 0 && (
        <>
          <dt>Opens</dt>
          <dd>
            <When at={work.opensAt} />
          </dd>
        </>
      )}
      {work.dueAt !== null && (
        <>
          <dt>Due</dt>
          <dd>
            <When at={work.dueAt} />
          </dd>
        </>
      )}
      {!open && spec.minutes !== null && (
        <>
          <dt>Time</dt>
          <dd>{spec.minutes} minutes from when you begin, and more if your instructor gave you more</dd>
        </>
      )}
      {spec.attempts > 1 && (
        <>
          <dt>Attempts</dt>
          <dd>You may hand in {spec.attempts} times. Each attempt has new walls.</dd>
        </>
      )}
    </dl>
  );
}

function Handed({ seen: { attempts, shown } }: { readonly seen: WorkToSee }) {
  const handed = attempts.filter(({ state }) => state !== 'open');
  if (handed.length === 0) return null;
  return (
    <section aria-labelledby="handed-heading">
      <h2 id="handed-heading">
        <span aria-hidden="true">✓ </span>Received
      </h2>
      <ul>
        {handed.map(({ id, number, receipt, handedInAt, late }) => (
          <li key={id}>
            Attempt {number}
            {handedInAt !== null && (
              <>
                , <When at={handedInAt} />
              </>
            )}
            : receipt <strong>{receipt}</strong>
            {late && '. It was late, and is flagged as late.'}
          </li>
        ))}
      </ul>
      {!shown && <p>The result shows here once it is given out.</p>}
    </section>
  );
}

function Begin({ seen: { work, attempts, problem } }: { readonly seen: WorkToSee }) {
  if (problem !== null) return attempts.length === 0 ? <p>{problem}</p> : null;
  return (
    <section aria-labelledby="begin-heading">
      <h2 id="begin-heading">{attempts.length === 0 ? 'Begin' : 'Once more'}</h2>
      <p>
        Your marks are saved on this device at each step. Stay on the same device until you have handed in.
      </p>
      <PostForm
        action="/api/attempts"
        also={{ work: work.id }}
        then={`/my-work/${work.id}`}
        send={attempts.length === 0 ? 'Begin' : 'Begin another attempt'}
      />
    </section>
  );
}
