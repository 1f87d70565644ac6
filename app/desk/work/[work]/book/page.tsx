import type { Metadata } from 'next';
import { isShown } from '../../../../../lib/classes/release';
import { confusionOf, swapsOf } from '../../../../../lib/classes/statistics/confusion';
import { RULE_SETS } from '../../../../../lib/limits/limit';
import { ruleSetTitle } from '../../../../../lib/limits/limits';
import { attemptAnswers } from '../../../../../lib/store/book/book-answers';
import { learnerNames, workHead } from '../../../../../lib/store/book/book-heads';
import { handInsOf } from '../../../../../lib/store/book/mark-book';
import { requirePage } from '../../../../access/require-page';
import { times } from '../../../book-numbers';
import { FaultTable } from '../../../fault-table';
import { SwapList } from '../../../figure-blocks';
import styles from '../../../mark-book.module.css';
import { ItemTable } from './item-table';
import { LearnerWalls, WallTable } from './wall-tables';
import { MarkAgainForm, ReleaseForm } from './work-forms';

export const metadata: Metadata = { title: 'Mark book of a set work' };

const MOST_SWAPS = 3;
/** Of more hand-ins than this only the last are read. */
const LATEST = 1000;

export default async function WorkBookPage({
  params,
}: {
  readonly params: Promise<{ readonly work: string }>;
}) {
  const { params: named, store } = await requirePage('/desk/work/[work]/book', params);
  const { work = '' } = named;
  const { db } = store;
  const [head, attempts, names] = await Promise.all([
    workHead(db, work),
    attemptAnswers(db, { work, latest: LATEST }),
    learnerNames(db, { work }),
  ]);
  // Statistics want walls met for the first time, alike for all: the first try of each.
  const firsts = attempts.filter(({ number }) => number === 1);
  const learners = [...new Set(firsts.map(({ learner }) => learner))];
  const handIns = learners.length === 0 ? [] : await handInsOf(db, learners);
  const tries = new Map(
    handIns.filter((each) => each.work === work && each.number === 1).map((each) => [each.learner, each]),
  );
  const answers = firsts.flatMap(({ walls }) => walls);
  const swaps = swapsOf(confusionOf(answers), MOST_SWAPS);
  return (
    <div className={styles.wide}>
      <p className="links">
        <a href={`/desk/groups/${head.group}/book`}>Mark book of {head.groupName}</a>
      </p>
      <h1>{head.title}: marks</h1>
      <p>
        {times(firsts.length, 'learner')} handed in
        {attempts.length === LATEST && ` (of the last ${LATEST} hand-ins)`}. {head.walls} walls,{' '}
        {head.sameForAll ? 'the same for all' : 'a set of their own for each learner'}.
      </p>
      <ReleaseForm work={work} shown={isShown(head, Date.now())} whenDue={head.release === 'when due'} />
      {answers.length === 0 ? (
        <p>Nothing is marked yet. Come back when the first hand-in is here.</p>
      ) : (
        <>
          <h2>Wall by wall</h2>
          <WallTable work={work} answers={answers} sameForAll={head.sameForAll} />
          <h2>Learner by learner</h2>
          <LearnerWalls
            work={work}
            answers={answers}
            names={names}
            tries={tries}
            walls={head.walls}
            passShare={head.passShare}
          />
          <h2>Fault by fault</h2>
          <FaultTable answers={answers} caption="Faults of this work. In brackets: 95 % limits" />
          <h3>Taken for something else</h3>
          <SwapList swaps={swaps} />
          <h2>How good is this set as a test?</h2>
          {!head.sameForAll && (
            <p className="column">
              Each learner has walls of their own, so “wall 3” is another wall for each. The figures for the
              whole set hold; what a single row says is mostly chance.
            </p>
          )}
          <ItemTable answers={answers} sameForAll={head.sameForAll} />
        </>
      )}
      <MarkAgainForm
        work={work}
        ruleSets={RULE_SETS.map((rules) => ({ value: rules, label: ruleSetTitle(rules) }))}
      />
    </div>
  );
}
