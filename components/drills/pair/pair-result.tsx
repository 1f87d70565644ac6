import type { PairRows } from '../../../lib/drills/pair/pair-rows';
import type { LengthSystem } from '../../../lib/units';
import { formatMeasure } from '../../result/format-measure';
import { OutcomeSign } from '../../result/signs';
import { ExplainedItem } from '../explained-finding';
import styles from './pair.module.css';

/** What differs between the two walls, measured on both. */
export function PairResult(props: {
  readonly rows: PairRows;
  readonly spoiledIs: 1 | 2;
  readonly system: LengthSystem;
  readonly onShow: (number: number) => void;
}) {
  const { rows, spoiledIs, system, onShow } = props;
  const { rightSide, findings, falseMarks } = rows;
  const found = findings.filter(({ outcome }) => outcome === 'found' || outcome === 'wrong name').length;
  return (
    <section aria-labelledby="pair-heading" className={styles.result}>
      <h2 id="pair-heading" tabIndex={-1}>
        {rightSide
          ? `Right: wall ${spoiledIs} is the spoiled one`
          : `No: wall ${spoiledIs} is the spoiled one`}
      </h2>
      <p>
        {rightSide
          ? foundWords(found, findings.length)
          : 'The wall you pointed to is sound, so marks on it do not count. Here is what is different:'}
      </p>
      <ol className="stack">
        {findings.map((row) => (
          <li key={row.number} className="panel">
            {rightSide && <OutcomeSign outcome={row.outcome} />}
            <ExplainedItem row={row} system={system} onShow={() => onShow(row.number)} />
            {row.onSound !== null && row.finding.unit !== 'there or not' && (
              <p>
                At the same place, wall {3 - spoiledIs} has{' '}
                <strong>{formatMeasure(row.onSound, row.finding.unit, system)}</strong>.
              </p>
            )}
          </li>
        ))}
      </ol>
      {falseMarks.length > 0 && (
        <>
          <h3>Marked, but the same on both walls</h3>
          <ul>
            {falseMarks.map(({ name, place, within }) => (
              <li key={`${name} ${place}`}>
                {name}. {place}
                {within &&
                  `: ${formatMeasure(within.value, within.unit, system)}, limit ${within.end} ${formatMeasure(within.limit, within.unit, system)}`}
                .
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function foundWords(found: number, all: number): string {
  if (found === 0)
    return all === 1 ? 'You did not find the difference.' : `You found none of ${all} differences.`;
  return found === all ? 'You found every difference.' : `You found ${found} of ${all} differences.`;
}
