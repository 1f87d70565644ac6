import type { Match } from '../../../../lib/classes/form-match';
import { TOPIC_TITLES, type Topic } from '../../../../lib/generate/topics';
import styles from '../../desk.module.css';

/** How far the forms are alike, counted from the walls themselves. */
export function MatchTable({ match }: { readonly match: Match }) {
  return (
    <>
      <p>
        {match.alike
          ? '✓ Every form has as many sound walls, and as many faults of each family, at the same difficulty.'
          : '✕ Not all forms are alike. The rows that differ are named.'}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table has to be scrolled by keyboard too */}
      <section className={styles.scroll} tabIndex={0} aria-label="Match of the forms">
        <table>
          <thead>
            <tr>
              <th scope="col">Form of</th>
              <th scope="col">Walls</th>
              <th scope="col">Difficulty, summed</th>
              <th scope="col">Sound</th>
              <th scope="col">Faults</th>
              {match.families.map((family) => (
                <th key={family} scope="col">
                  {TOPIC_TITLES[family as Topic] ?? family}
                </th>
              ))}
              <th scope="col">Like the first</th>
            </tr>
          </thead>
          <tbody>
            {match.rows.map((row) => (
              <tr key={row.name}>
                <th scope="row">{row.name}</th>
                <td>{row.walls}</td>
                <td>{row.difficulty}</td>
                <td>{row.sound}</td>
                <td>{row.faults}</td>
                {row.byFamily.map((count, index) => (
                  <td key={match.families[index]}>{count}</td>
                ))}
                <td>{row.alike ? 'yes' : 'no'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}
