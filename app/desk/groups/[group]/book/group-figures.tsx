import {
  ENOUGH_FOR_DIFFICULTY,
  groupScale,
  SOUND_WALL,
} from '../../../../../lib/classes/statistics/abilities';
import { confusionOf, swapsOf } from '../../../../../lib/classes/statistics/confusion';
import { figuresOf } from '../../../../../lib/classes/statistics/learner-figures';
import { attemptAnswers } from '../../../../../lib/store/book/book-answers';
import { lastSpecOf } from '../../../../../lib/store/book/book-heads';
import type { Store } from '../../../../../lib/store/database';
import { faultName } from '../../../../../lib/wall-page/fault-choices';
import { signedText, times } from '../../../book-numbers';
import { FaultTable } from '../../../fault-table';
import { ConfidenceBlock, SoundOrFaultyBlock, StepsTable, SwapList } from '../../../figure-blocks';
import styles from '../../../mark-book.module.css';
import { Needs } from '../../../needs';

/** Of a big group only what came in last is read: it says what to teach now. */
const LATEST = 400;
const MOST_SWAPS = 3;
const HARDEST = 5;

/** What the group can see and what not, from its latest hand-ins. */
export async function GroupFigures({ db, group }: { readonly db: Store['db']; readonly group: string }) {
  const attempts = await attemptAnswers(db, { group, latest: LATEST });
  const last = await lastSpecOf(db, group);
  const answers = attempts.flatMap(({ walls }) => walls);
  if (answers.length === 0 || last === null) return <p>No hand-in is marked yet.</p>;
  const figures = figuresOf(answers);
  const swaps = swapsOf(confusionOf(answers), MOST_SWAPS);
  const hard = groupScale(answers)
    .difficulties.filter(({ answers: count }) => count >= ENOUGH_FOR_DIFFICULTY)
    .sort((a, b) => b.difficulty - a.difficulty)
    .slice(0, HARDEST);
  return (
    <>
      <h2>Teach next</h2>
      <p className="column">
        What this group most needs, from its last {times(attempts.length, 'hand-in')}. What could fall counts
        most.
      </p>
      <Needs group={group} answers={answers} last={last} />
      <h2>Fault by fault</h2>
      <FaultTable answers={answers} caption="Fault by fault. In brackets: 95 % limits" />
      <div className={styles.beside}>
        <section>
          <h3>Taken for something else</h3>
          <SwapList swaps={swaps} />
          <h3>Step by step</h3>
          <StepsTable figures={figures} />
        </section>
        <section>
          <h3>Sound or faulty?</h3>
          <SoundOrFaultyBlock figures={figures} />
          <h3>How sure, and how right</h3>
          <ConfidenceBlock figures={figures} />
          <h3>Hardest for this group</h3>
          {hard.length === 0 ? (
            <p>Shown from {ENOUGH_FOR_DIFFICULTY} answers to a fault.</p>
          ) : (
            <ol>
              {hard.map(({ question, difficulty, answers: count }) => (
                <li key={question}>
                  {question === SOUND_WALL ? 'Leaving a sound wall alone' : faultName(question)}:{' '}
                  {signedText(difficulty, 1)} logits, from {count} answers.
                </li>
              ))}
            </ol>
          )}
        </section>
      </div>
    </>
  );
}
