import type { Metadata } from 'next';
import { isShown } from '../../../../lib/classes/release';
import { groupScale } from '../../../../lib/classes/statistics/abilities';
import { figuresOf } from '../../../../lib/classes/statistics/learner-figures';
import { scoreError } from '../../../../lib/classes/statistics/score-error';
import { fewWallsWords } from '../../../../lib/classes/statistics/small-groups';
import { attemptAnswers } from '../../../../lib/store/book/book-answers';
import { learnerHead } from '../../../../lib/store/book/book-heads';
import { type BookWork, bookWorks } from '../../../../lib/store/book/mark-book';
import { recordsOfLearner } from '../../../../lib/store/hand-in-record';
import { requirePage } from '../../../access/require-page';
import { errorText, percentText, signedText, times } from '../../book-numbers';
import { FaultTable } from '../../fault-table';
import { CertainList, ConfidenceBlock, SoundOrFaultyBlock, StepsTable } from '../../figure-blocks';
import styles from '../../mark-book.module.css';
import { AbilityPlot } from '../../plots/ability-plot';
import { ScoresPlot } from '../../plots/scores-plot';
import { HandInCard } from './hand-in-card';

export const metadata: Metadata = { title: 'Mark book of a learner' };

/** The group is the measure: its latest hand-ins, and all of the learner's own. */
const LATEST = 400;

export default async function LearnerPage({
  params,
}: {
  readonly params: Promise<{ readonly learner: string }>;
}) {
  const { params: named, store } = await requirePage('/desk/learners/[learner]', params);
  const { learner = '' } = named;
  const { db } = store;
  const head = await learnerHead(db, learner);
  const [own, group, works, records] = await Promise.all([
    attemptAnswers(db, { learners: [learner] }),
    attemptAnswers(db, { group: head.group, latest: LATEST }),
    bookWorks(db, head.group),
    recordsOfLearner(db, learner),
  ]);
  const answers = own.flatMap(({ walls }) => walls);
  const figures = figuresOf(answers);
  const byId = new Map(works.map((work) => [work.id, work]));
  const titleOf = (work: string) => byId.get(work)?.title ?? 'A set work';
  const scores = new Map(own.map(({ attempt, walls }) => [attempt, walls.map(({ score }) => score)]));
  const now = Date.now();
  const others = group.filter((attempt) => attempt.learner !== learner).flatMap(({ walls }) => walls);
  return (
    <div className={styles.wide}>
      <p className="links">
        <a href={`/desk/groups/${head.group}/book`}>Mark book of {head.groupName}</a>
      </p>
      <h1>{head.name}</h1>
      {figures.score === null ? (
        <p>Nothing is marked yet.</p>
      ) : (
        <>
          <p className="column">
            {times(figures.walls, 'wall')} marked. Mean score <strong>{percentText(figures.score)}</strong>{' '}
            {errorText(scoreError(figures.score, figures.walls))}. {times(figures.falseMarks, 'false mark')}.
          </p>
          <p className="column">{fewWallsWords(figures.walls)}</p>
          <div className={styles.beside}>
            <section>
              <h2>Step by step</h2>
              <StepsTable figures={figures} />
            </section>
            <section>
              <h2>Certain and wrong</h2>
              <CertainList
                wrong={figures.certainButWrong}
                nameOf={({ work, place }) => `${titleOf(work)}, wall ${place}`}
              />
            </section>
          </div>
          <h2>Ability</h2>
          <AbilityBlock learner={learner} answers={[...answers, ...others]} />
          <h2>Wall after wall</h2>
          <ScoresPlot
            scores={[...own].reverse().flatMap(({ walls }) => walls.map(({ score }) => score))}
            label={`Scores of ${times(figures.walls, 'wall')} in the order handed in; the line is the mean of each with the four before it.`}
          />
          <p className="column">
            Dots are walls, in percent. The line is the mean of a wall with the four before it.
          </p>
          <h2>By family</h2>
          <FaultTable answers={answers} caption="Fault by fault. In brackets: 95 % limits" />
          <div className={styles.beside}>
            <section>
              <h2>Sound or faulty?</h2>
              <SoundOrFaultyBlock figures={figures} />
            </section>
            <section>
              <h2>How sure, and how right</h2>
              <ConfidenceBlock figures={figures} />
            </section>
          </div>
        </>
      )}
      <h2>Hand-ins</h2>
      {records.length === 0 && <p>None yet.</p>}
      {records.map((record) => (
        <HandInCard
          key={record.attempt}
          record={record}
          title={titleOf(record.work)}
          shown={isShownOf(byId.get(record.work), now)}
          walls={scores.get(record.attempt) ?? []}
        />
      ))}
    </div>
  );
}

function isShownOf(work: BookWork | undefined, now: number): boolean {
  return work !== undefined && isShown(work, now);
}

/** The Rasch ability, as a range and never as a rank. */
function AbilityBlock({
  learner,
  answers,
}: {
  readonly learner: string;
  readonly answers: Parameters<typeof groupScale>[0];
}) {
  const scale = groupScale(answers);
  const { ability, standardError } = scale.abilityOf(learner);
  const others = [...new Set(answers.map((answer) => answer.learner))].filter((each) => each !== learner);
  const low = signedText(ability - 2 * standardError, 1);
  const high = signedText(ability + 2 * standardError, 1);
  return (
    <>
      <AbilityPlot
        own={{ ability, standardError }}
        others={others.map((each) => scale.abilityOf(each).ability)}
        label={`Ability ${signedText(ability, 1)} logits, standard error ${standardError.toFixed(1)}; the others of the group as dots.`}
      />
      <p className="column">
        Ability {signedText(ability, 1)}, standard error {standardError.toFixed(1)}: most likely between {low}{' '}
        and {high}. 0 is the middle of the group. Small dots are the others. It takes into account which
        faults were met: the hard ones count for more. It is a range, not a rank.
      </p>
    </>
  );
}
