import type { Metadata } from 'next';
import { When } from '../../../../components/time/when';
import { TOPIC_TITLES } from '../../../../lib/generate/topics';
import { parseCode } from '../../../../lib/generate/wall-code';
import { ruleSetTitle } from '../../../../lib/limits/limits';
import { groupOf, groupsFor } from '../../../../lib/store/groups/groups';
import type { NamedLearner } from '../../../../lib/store/groups/roster';
import { rosterOf } from '../../../../lib/store/learners';
import { type WorkRow, workOf } from '../../../../lib/store/set-work';
import { KIND_TITLES } from '../../../../lib/wall-page/brief-words';
import { layForSetWork } from '../../../../lib/wall-page/wall-to-read';
import { requirePage } from '../../../access/require-page';
import { readLessons } from '../../../lessons/read-lessons';
import { RelatedReading } from '../../../my-work/related-reading';
import { firstForm, matchFor } from '../../../set-work/lay-forms';
import { previewOf } from '../../../set-work/preview';
import { RELEASE_WORDS } from '../../../set-work/release-words';
import { WorkForm } from '../../../set-work/work-form';
import styles from '../../desk.module.css';
import { MatchTable } from './match-table';
import { FormChoice, PreviewWalls } from './preview-walls';
import { TryRoom } from './try-room';
import { CopyWork, WorkSteps } from './work-steps';

export const metadata: Metadata = { title: 'Set work' };

/** Forms counted at once; the others when they are asked for: each takes a moment. */
const FEW = 4;
/** Where nobody is on the roster yet. */
const SAMPLES = ['1', '2', '3'].map((n) => ({ id: `sample ${n}`, name: `Sample ${n}` }));

interface Props {
  readonly params: Promise<{ readonly work: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

export default async function WorkAtDeskPage({ params, searchParams }: Props) {
  const {
    params: { work: id = '' },
    person,
    store,
  } = await requirePage('/desk/work/[work]', params);
  const asked = await searchParams;
  const work = await workOf(store, id);
  const [group, groups, roster, lessons] = await Promise.all([
    groupOf(store, work.groupId),
    groupsFor(store, person.kind === 'owner' ? null : person.userId),
    rosterOf(store.db, work.groupId),
    readLessons(),
  ]);
  const learners: readonly NamedLearner[] = roster.length > 0 ? roster : SAMPLES;
  const learner = work.spec.sameForAll
    ? null
    : (learners.find((each) => each.id === asked.learner) ?? learners[0] ?? null);
  const walls = previewOf(await firstForm(store, work, learner?.id ?? null));
  const tried = walls.find(({ place }) => String(place) === asked.wall);
  if (tried) {
    return (
      <>
        <p className="links">
          <a className="link" href={`/desk/work/${id}${learner ? `?learner=${learner.id}` : ''}`}>
            Back to {work.title}
          </a>
        </p>
        <h1>As a learner sees it</h1>
        <TryRoom
          code={tried.code}
          laid={layForSetWork(parseCode(tried.code))}
          label={`Wall ${tried.place} of ${walls.length}: ${tried.kind}`}
          openingsUp={work.spec.openingsUp}
        />
      </>
    );
  }
  const counted = asked.match === 'all' ? learners : learners.slice(0, FEW);
  return (
    <div className={styles.page}>
      <p className="links">
        <a className="link" href={`/desk/groups/${work.groupId}`}>
          {group.name}
        </a>
        <a className="link" href={`/desk/work/${id}/print${learner ? `?learner=${learner.id}` : ''}`}>
          Print
        </a>
        {work.state !== 'draft' && (
          <a className="link" href={`/desk/work/${id}/book`}>
            Marks
          </a>
        )}
      </p>
      <h1>{work.title}</h1>
      <Facts work={work} />
      <WorkSteps work={work} />
      <CopyWork work={work} groups={groups} />
      <RelatedReading spec={work.spec} lessons={lessons} />
      <h2>What learners see</h2>
      {learner && <FormChoice work={id} learners={learners} chosen={learner.id} />}
      <PreviewWalls work={id} walls={walls} learner={learner?.id ?? null} />
      <h2>Is it fair?</h2>
      {work.spec.sameForAll ? (
        <p>Everyone gets the same walls.</p>
      ) : (
        <>
          <MatchTable rows={await matchFor(store, work, counted)} />
          {counted.length < learners.length && (
            <p>
              <a className="link" href={`/desk/work/${id}?match=all`}>
                Count the forms of all {learners.length}
              </a>
            </p>
          )}
        </>
      )}
      {work.state === 'draft' && (
        <>
          <h2>Change the draft</h2>
          <WorkForm
            action="/api/work/edit"
            send="Save"
            also={{ work: id }}
            start={{ ...work, days: null, graceMinutes: Math.round(work.graceMs / 60_000) }}
            lessons={lessons.map(({ slug, meta }) => ({ slug, title: meta.title }))}
          />
        </>
      )}
    </div>
  );
}

const STATE_WORDS = {
  draft: 'Draft. Learners cannot see it yet.',
  set: 'Published. Learners can see it.',
  closed: 'Closed. Nobody can start it any more.',
} as const;

function Facts({ work }: { readonly work: WorkRow }) {
  const { spec, opensAt, dueAt, graceMs, release } = work;
  return (
    <>
      <p>
        <strong>{STATE_WORDS[work.state]}</strong>
      </p>
      <p>
        {spec.topics.map((topic) => TOPIC_TITLES[topic]).join(', ')} ·{' '}
        {spec.kinds.map((kind) => KIND_TITLES[kind].toLowerCase()).join(', ')}
        {spec.openingsUp !== null && ` · up to ${spec.openingsUp} units may be lifted off each wall`}
      </p>
      <p>
        {spec.walls === 1 ? '1 wall' : `${spec.walls} walls`},{' '}
        {spec.sameForAll ? 'the same for everyone' : 'different for each learner'} · difficulty{' '}
        {spec.difficulty} of 5 · checked against {ruleSetTitle(spec.rules)} ·{' '}
        {spec.attempts === 1 ? '1 attempt' : `${spec.attempts} attempts`} ·{' '}
        {spec.minutes === null ? 'no time limit' : `${spec.minutes} minutes`}
      </p>
      <p>
        {opensAt !== null && (
          <>
            Opens <When at={opensAt} />.{' '}
          </>
        )}
        {dueAt !== null ? (
          <>
            Due <When at={dueAt} />, with a grace period of {Math.round(graceMs / 60_000)} minutes.
          </>
        ) : (
          'No due date.'
        )}{' '}
        Results and key: {RELEASE_WORDS[release].toLowerCase()}.
      </p>
      {spec.passMark && (
        <p>
          Pass mark {Math.round(spec.passMark.share * 100)} of 100, set by {spec.passMark.person} on{' '}
          {spec.passMark.date}: {spec.passMark.method}
        </p>
      )}
    </>
  );
}
