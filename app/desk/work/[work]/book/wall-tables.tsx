import { PASS_WORDS, passOutcome } from '../../../../../lib/classes/pass-outcome';
import { scoreError } from '../../../../../lib/classes/statistics/score-error';
import type { WallAnswer } from '../../../../../lib/classes/statistics/wall-answer';
import type { BookCell } from '../../../../../lib/store/book/mark-book';
import { faultName } from '../../../../../lib/wall-page/fault-choices';
import { errorText, percentText } from '../../../book-numbers';
import styles from '../../../mark-book.module.css';
import { Head, SheetTable } from '../../../sheet-table';

/** Walls that are read together: one place where all have the same walls; else all walls with as many faults. */
interface WallRow {
  readonly key: string;
  readonly there: string;
  /** The wall to look at, where it is one wall. */
  readonly place: number | null;
  readonly own: readonly WallAnswer[];
}

function rowsOf(answers: readonly WallAnswer[], sameForAll: boolean): readonly WallRow[] {
  const numberOf = ({ place, faults }: WallAnswer) => (sameForAll ? place : faults.length);
  return [...new Set(answers.map(numberOf))]
    .sort((a, b) => a - b)
    .map((number) => {
      const own = answers.filter((answer) => numberOf(answer) === number);
      return sameForAll
        ? { key: `Wall ${number}`, there: thereWords(own[0]), place: number, own }
        : {
            key: countWords(number),
            there: own.length === 1 ? '1 wall' : `${own.length} walls`,
            place: null,
            own,
          };
    });
}

/** What stands in the walls, how they were scored and what the group called them. */
export function WallTable({
  work,
  answers,
  sameForAll,
}: {
  readonly work: string;
  readonly answers: readonly WallAnswer[];
  readonly sameForAll: boolean;
}) {
  return (
    <SheetTable
      caption={sameForAll ? 'Walls of this work' : 'Walls of this work, by how many faults are in them'}
      head={
        <>
          <Head>Wall</Head>
          <Head>{sameForAll ? 'What is wrong' : 'How many'}</Head>
          <Head number>Mean score, %</Head>
          <Head number>Learners who marked a fault</Head>
          <Head number>Faults found</Head>
          <Head number>False marks</Head>
        </>
      }
    >
      <tbody>
        {rowsOf(answers, sameForAll).map(({ key, there, place, own }) => {
          const answered = own.filter((answer) => answer.answered);
          const faults = own.flatMap((answer) => answer.faults);
          return (
            <tr key={key}>
              <th scope="row">
                {place === null ? key : <a href={`/desk/work/${work}/walls/${place}`}>{key}</a>}
              </th>
              <td>{there}</td>
              <td className={styles.number}>{percentText(meanOf(own))}</td>
              <td className={styles.number}>
                {answered.filter(({ saysSound }) => !saysSound).length} of {answered.length}
              </td>
              <td className={styles.number}>
                {faults.length === 0
                  ? '–'
                  : `${faults.filter(({ found }) => found).length} of ${faults.length}`}
              </td>
              <td className={styles.number}>
                {own.reduce((sum, { falseMarks }) => sum + falseMarks.length, 0)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </SheetTable>
  );
}

/** Each learner's score on each wall. */
export function LearnerWalls({
  work,
  answers,
  names,
  tries,
  walls,
  passShare,
}: {
  readonly work: string;
  readonly answers: readonly WallAnswer[];
  readonly names: ReadonlyMap<string, string>;
  /** The first hand-in of each learner. */
  readonly tries: ReadonlyMap<string, BookCell>;
  readonly walls: number;
  readonly passShare: number | null;
}) {
  const learners = [...new Set(answers.map(({ learner }) => learner))]
    .map((id) => ({ id, name: names.get(id) ?? '', own: answers.filter(({ learner }) => learner === id) }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
  const places = Array.from({ length: walls }, (_, index) => index + 1);
  return (
    <SheetTable
      caption="Score on each wall, in percent (first try)"
      head={
        <>
          <Head>Learner</Head>
          <Head number>All</Head>
          {places.map((place) => (
            <Head key={place} number>
              <span className="visually-hidden">Wall </span>
              {place}
            </Head>
          ))}
        </>
      }
    >
      <tbody>
        {learners.map(({ id, name, own }) => (
          <tr key={id}>
            <th scope="row">
              <a href={`/desk/learners/${id}`}>{name}</a>
            </th>
            <td className={styles.number}>
              <AllWalls mean={meanOf(own)} walls={own.length} cell={tries.get(id)} passShare={passShare} />
            </td>
            {places.map((place) => {
              const answer = own.find((each) => each.place === place);
              return (
                <td key={place} className={styles.number}>
                  {answer ? (
                    <a href={`/desk/work/${work}/walls/${place}?attempt=${tries.get(id)?.attempt}`}>
                      <span className="visually-hidden">Wall {place}: </span>
                      {percentText(answer.score)}
                    </a>
                  ) : (
                    '–'
                  )}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </SheetTable>
  );
}

function countWords(faults: number): string {
  if (faults === 0) return 'Sound walls';
  return faults === 1 ? 'Walls with 1 fault' : `Walls with ${faults} faults`;
}

function thereWords(answer: WallAnswer | undefined): string {
  const faults = answer?.faults ?? [];
  return faults.length === 0 ? 'Sound' : faults.map(({ fault }) => faultName(fault)).join(', ');
}

function meanOf(answers: readonly WallAnswer[]): number {
  return answers.reduce((sum, { score }) => sum + score, 0) / answers.length;
}

/** The mark that counts: an instructor's own goes before the mean of the walls. */
function AllWalls(props: {
  readonly mean: number;
  readonly walls: number;
  readonly cell: BookCell | undefined;
  readonly passShare: number | null;
}) {
  const { mean, walls, cell, passShare } = props;
  const isDecided = cell?.overridden === true;
  const score = isDecided && cell.score !== null ? cell.score : mean;
  const notes = [
    ...(isDecided ? ['changed by an instructor'] : []),
    ...(passShare === null ? [] : [PASS_WORDS[passOutcome(score, walls, passShare, isDecided)]]),
  ];
  return (
    <>
      <strong>{percentText(score)}</strong>
      {!isDecided && <span className={styles.error}>{errorText(scoreError(score, walls))}</span>}
      {notes.length > 0 && <span className={styles.note}>{notes.join(', ')}</span>}
    </>
  );
}
