import { PASS_WORDS, passOutcome } from '../../../../../lib/classes/pass-outcome';
import { scoreError } from '../../../../../lib/classes/statistics/score-error';
import type { BookCell, BookRow, BookWork } from '../../../../../lib/store/book/mark-book';
import { errorText, percentText } from '../../../book-numbers';
import styles from '../../../mark-book.module.css';
import { Head, SheetTable } from '../../../sheet-table';

/** Learners by set work: the score and its standard error. What is all marked comes first, then work by work. */
export function BookTable({
  works,
  rows,
  caption,
}: {
  readonly works: readonly BookWork[];
  readonly rows: readonly BookRow[];
  readonly caption: string;
}) {
  return (
    <>
      <p className="column">
        Each mark is the mean score of the walls, in percent, give or take the ± beside it: that is the most
        its standard error can be. Two marks less than about three times that apart can differ by luck alone.
      </p>
      <SheetTable
        caption={caption}
        head={
          <>
            <Head>Learner</Head>
            <Head number>All walls</Head>
            {works.map(({ id, title, walls, passShare }) => (
              <Head key={id} number>
                <a href={`/desk/work/${id}/book`}>{title}</a>
                <span className={styles.note}>
                  {walls} walls{passShare !== null && `, pass mark ${percentText(passShare)}`}
                </span>
              </Head>
            ))}
          </>
        }
      >
        <tbody>
          {rows.map((row) => (
            <tr key={row.learner}>
              <th scope="row">
                <a href={`/desk/learners/${row.learner}`}>{row.name}</a>
              </th>
              <AllCell works={works} row={row} />
              {works.map(({ id, walls, passShare }) => (
                <ScoreCell key={id} cell={row.cells.get(id)} walls={walls} passShare={passShare} />
              ))}
            </tr>
          ))}
        </tbody>
      </SheetTable>
    </>
  );
}

/** All walls of all works together, each wall counting the same. */
function AllCell({ works, row }: { readonly works: readonly BookWork[]; readonly row: BookRow }) {
  let walls = 0;
  let sum = 0;
  for (const work of works) {
    const score = row.cells.get(work.id)?.score;
    if (score === null || score === undefined) continue;
    walls += work.walls;
    sum += work.walls * score;
  }
  if (walls === 0) return <td className={styles.number}>–</td>;
  return (
    <td className={styles.number}>
      <strong>{percentText(sum / walls)}</strong>
      <span className={styles.error}>{errorText(scoreError(sum / walls, walls))}</span>
    </td>
  );
}

function ScoreCell(props: {
  readonly cell: BookCell | undefined;
  readonly walls: number;
  readonly passShare: number | null;
}) {
  const { cell, walls, passShare } = props;
  if (cell === undefined) {
    return (
      <td className={styles.number}>
        <span aria-hidden="true">–</span>
        <span className="visually-hidden">not handed in</span>
      </td>
    );
  }
  const notes = [
    ...(passShare !== null && cell.score !== null
      ? [PASS_WORDS[passOutcome(cell.score, walls, passShare, cell.overridden)]]
      : []),
    ...(cell.late ? ['late'] : []),
    ...(cell.overridden ? ['changed by an instructor'] : []),
    ...(cell.version > 1 ? ['marked again'] : []),
    ...(cell.number > 1 ? [`try ${cell.number}`] : []),
  ];
  return (
    <td className={styles.number}>
      {cell.score === null ? 'not marked' : percentText(cell.score)}
      {cell.score !== null && !cell.overridden && (
        <span className={styles.error}>{errorText(scoreError(cell.score, walls))}</span>
      )}
      {notes.length > 0 && <span className={styles.note}>{notes.join(', ')}</span>}
    </td>
  );
}
