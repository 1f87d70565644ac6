import { analyseTest, itemsFor, type TestFigures } from '../../../../../lib/classes/statistics/item-analysis';
import {
  fewLearnersWords,
  type ItemFlag,
  itemFlag,
  setLengthWords,
} from '../../../../../lib/classes/statistics/small-groups';
import { type TestItem, testTable } from '../../../../../lib/classes/statistics/test-items';
import type { WallAnswer } from '../../../../../lib/classes/statistics/wall-answer';
import { fleissKappa } from '../../../../../lib/marking/agreement';
import { faultName } from '../../../../../lib/wall-page/fault-choices';
import { percentText, signedText, times } from '../../../book-numbers';
import styles from '../../../mark-book.module.css';
import { Head, SheetTable } from '../../../sheet-table';

/** Reliability that a set of this length would have to reach before its marks sort learners well. */
const WANTED = 0.8;

const FLAG_WORDS: Readonly<Record<ItemFlag, string>> = {
  'check the key':
    'Below zero: those who did well elsewhere missed it. It may be chance. Look at the wall and its key once.',
  'nearly all miss it': 'Nearly all miss it. Teach it, or make it plainer.',
  'nearly all see it': 'Nearly all see it. Good for learning, no use for telling learners apart.',
};

/** The set as a test: how hard each question was, whether it tells learners apart, and how far the totals can be trusted. */
export function ItemTable({
  answers,
  sameForAll,
}: {
  readonly answers: readonly WallAnswer[];
  readonly sameForAll: boolean;
}) {
  const { items, scores, learners, leftOut } = testTable(answers, sameForAll);
  if (learners.length === 0) return <p>Nobody has handed in all the walls yet.</p>;
  const figures = analyseTest(scores);
  const first = answers.filter(({ learner }) => learner === learners[0]);
  const faults = first.reduce((sum, answer) => sum + answer.faults.length, 0);
  const sound = first.filter((answer) => answer.faults.length === 0).length;
  return (
    <>
      <TestWords figures={figures} />
      {sameForAll && <AgreementWords answers={answers} learners={learners} />}
      <p className="column">{setLengthWords(first.length, faults, sound)}</p>
      <p className="column">{fewLearnersWords(learners.length)}</p>
      {leftOut > 0 && <p>{times(leftOut, 'learner')} left out: not all walls, or other walls.</p>}
      <SheetTable
        caption={`Questions of the set, from ${times(learners.length, 'learner')}`}
        head={
          <>
            <Head>Question</Head>
            <Head number>Right, %</Head>
            <Head number>Discrimination (−1 to 1)</Head>
            <Head number>Reliability without it</Head>
            <Head>Note</Head>
          </>
        }
      >
        <tbody>
          {figures.items.map((item, index) => {
            const asked = items[index];
            const flag = itemFlag(item);
            return (
              <tr key={asked ? `${asked.place} ${asked.index}` : index}>
                <th scope="row">{asked && itemWords(asked)}</th>
                <td className={styles.number}>{percentText(item.p)}</td>
                <td className={styles.number}>
                  {item.discrimination === null ? '–' : signedText(item.discrimination, 2)}
                </td>
                <td className={styles.number}>
                  {item.alphaWithout === null ? '–' : signedText(item.alphaWithout, 2)}
                </td>
                <td>{flag && <span className={styles.flag}>{FLAG_WORDS[flag]}</span>}</td>
              </tr>
            );
          })}
        </tbody>
      </SheetTable>
      <p className="column">
        “Discrimination” is the correlation of a question with the rest of the set (corrected point-biserial).
        Reliability is KR-20, which for part scores is Cronbach’s alpha; both with the variance of all
        learners.
      </p>
    </>
  );
}

function TestWords({ figures: { alpha, standardError, mean, items } }: { readonly figures: TestFigures }) {
  if (alpha === null || standardError === null) {
    return <p>All learners have the same total, so nothing can be said about reliability.</p>;
  }
  const needed = alpha > 0 && alpha < WANTED ? itemsFor(WANTED, alpha, items.length) : null;
  return (
    <p className="column">
      Of {times(items.length, 'question')} the group got {mean.toFixed(1)} right on average. Reliability{' '}
      {signedText(alpha, 2)}. A learner’s total is good to about ±{standardError.toFixed(1)}{' '}
      {standardError < 1.05 ? 'question' : 'questions'} (standard error of measurement).{' '}
      {needed !== null &&
        `For a reliability of ${WANTED.toFixed(2)} it would take about ${needed} such questions.`}
      {alpha <= 0 && 'A reliability of 0 or less means that the totals say nothing about who sees more.'}
    </p>
  );
}

/** How far the learners who answered every wall agree with each other on "sound or faulty", whatever the truth is. */
function AgreementWords({
  answers,
  learners,
}: {
  readonly answers: readonly WallAnswer[];
  readonly learners: readonly string[];
}) {
  const judges = learners.filter((id) =>
    answers.every(({ learner, answered }) => learner !== id || answered),
  );
  const whole = answers.filter(({ learner }) => judges.includes(learner));
  if (judges.length < 2) return null;
  const places = [...new Set(whole.map(({ place }) => place))];
  const kappa = fleissKappa(
    places.map((place) => {
      const own = whole.filter((answer) => answer.place === place);
      const sound = own.filter(({ saysSound }) => saysSound).length;
      return [own.length - sound, sound];
    }),
  );
  return (
    <p className="column">
      {kappa === null
        ? 'All called every wall the same, so their agreement says nothing.'
        : `How far they agree with each other on sound or faulty: Fleiss’ kappa ${signedText(kappa, 2)} (1 is full agreement, 0 is chance).`}
    </p>
  );
}

function itemWords({ place, fault, sound }: TestItem): string {
  if (fault !== null) return `Wall ${place}: ${faultName(fault)}`;
  return sound ? `Wall ${place}: sound, left alone` : `Wall ${place}`;
}
