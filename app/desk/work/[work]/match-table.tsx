import type { MatchRow } from '../../../../lib/classes/form-match';
import { percentText } from '../../book-numbers';
import styles from '../../desk.module.css';

/** How far the forms are alike, counted from the walls themselves. */
export function MatchTable({ rows }: { readonly rows: readonly MatchRow[] }) {
  return (
    <>
      <p>
        Every form has the same topics, kinds of wall and level. Which walls are sound and what is wrong with
        the others is drawn for each learner alone, so nobody can tell it from another learner’s walls.
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table has to be scrolled by keyboard too */}
      <section className={styles.scroll} tabIndex={0} aria-label="Match of the forms">
        <table>
          <thead>
            <tr>
              <th scope="col">Form of</th>
              <th scope="col">Walls</th>
              <th scope="col">Sound</th>
              <th scope="col">Faults</th>
              <th scope="col">Over their limits by, % on average</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td>{row.walls}</td>
                <td>{row.sound}</td>
                <td>{row.faults}</td>
                <td>{row.severity === null ? '–' : percentText(row.severity)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
