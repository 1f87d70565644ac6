import { faultName } from '../../../../../../lib/wall-page/fault-choices';
import { percentText } from '../../../../book-numbers';
import styles from '../../../../mark-book.module.css';
import type { OpenPlace } from '../../../../open-place';
import { Head, SheetTable } from '../../../../sheet-table';

/** The map in words: each marked part, by how many, and what they called it. */
export function HeatTable({ open: { heat, thereAt, nameOf, handIns } }: { readonly open: OpenPlace }) {
  if (heat.length === 0) return <p>Nobody marked anything on this wall.</p>;
  const learners = new Set(handIns.map(({ learner }) => learner)).size;
  return (
    <SheetTable
      caption="Marked parts, the most marked first"
      head={
        <>
          <Head>Part</Head>
          <Head number>Learners</Head>
          <Head>Called</Head>
          <Head>In the key</Head>
        </>
      }
    >
      <tbody>
        {heat.map(({ part, learners: count, share, names }) => {
          const there = thereAt(part).map(({ check }) => faultName(check));
          return (
            <tr key={part}>
              <th scope="row">{nameOf(part)}</th>
              <td className={styles.number}>
                {count} of {learners} ({percentText(share)} %)
              </td>
              <td>{names.map(([fault, times]) => `${faultName(fault)} (${times})`).join(', ')}</td>
              <td>{there.join(', ') || 'nothing'}</td>
            </tr>
          );
        })}
      </tbody>
    </SheetTable>
  );
}
