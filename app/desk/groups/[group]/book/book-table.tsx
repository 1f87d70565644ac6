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
      <p className={styles.text}>
        Each mark is the mean score of the walls, in percent. ± is its standard error: the most it can be for
        that many walls. Two marks closer than that are not really apart.
      </p>
      <SheetTable
        caption={caption}
        head={
          <>
            <Head>Learner</Head>
            <Head number>All walls</Head>
            {works.map(({ id, title, walls }) => (
              <Head key={id} number>
                <a href={`/desk/work/${id}/book`}>{title}</a>
                <span className={styles.note}>{walls} walls</span>
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
              {works.map(({ id, walls }) => (
                <ScoreCell key={id} cell={row.cells.get(id)} walls={walls} />
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

function ScoreCell({ cell, walls }: { readonly cell: BookCell | undefined; readonly walls: number }) {
  if (cell === undefined) {
    return (
      <td className={styles.number}>
        <span aria-hidden="true">–</span>
        <span className="visually-hidden">not handed in</span>
      </td>
    );
  }
  const notes = [
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
