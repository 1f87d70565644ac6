import type { Batch } from '../../lib/wall/model';
import styles from './mixing-rows.module.css';

/** The mixing tickets of a wall in a few columns. A row can be picked where it says so. */
export function MixingRows(props: {
  readonly caption: string;
  readonly batches: readonly Batch[];
  readonly picked: string | null;
  readonly onPick: ((batch: string) => void) | null;
}) {
  const { caption, batches, picked, onPick } = props;
  return (
    <table className={styles.tickets}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Courses</th>
          <th scope="col">Cement : lime : sand</th>
          <th scope="col">Air</th>
          <th scope="col">Used after</th>
          {onPick && <th scope="col">Pick</th>}
        </tr>
      </thead>
      <tbody>
        {batches.map(({ id, fromCourse, toCourse, portland, lime, sand, air, minutes }, index) => (
          <tr key={id} data-picked={picked === id}>
            <td>
              {fromCourse}–{toCourse}
            </td>
            <td>
              {portland} : {lime} : {sand}
            </td>
            <td>{air} °C</td>
            <td>{minutes} min</td>
            {onPick && (
              <td>
                <button
                  type="button"
                  aria-pressed={picked === id}
                  aria-label={`Pick mixing ${index + 1}`}
                  onClick={() => onPick(id)}
                >
                  {index + 1}
                </button>
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
