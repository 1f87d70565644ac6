import type { ExplainedFinding } from '../../lib/drills/explained-finding';
import type { LengthSystem } from '../../lib/units';
import { ACT_REASONS } from '../result/answer-check';
import { measuredWords } from '../result/finding-measure';
import { formatMeasure, isFine } from '../result/format-measure';
import { HazardSign } from '../result/signs';
import { Terms } from '../ui/terms';
import { MeasureStrip } from './build/measure-strip';
import styles from './drills.module.css';

/** Name, place and measure of a finding in one line: "Unit proud, course 5, unit 3: 12 mm, limit 4 mm". */
export function findingLine({ name, place, finding }: ExplainedFinding, system: LengthSystem): string {
  const { limit, unit } = finding;
  const figures =
    unit === 'there or not'
      ? 'must be there'
      : `${measuredWords(finding, system)}, limit ${formatMeasure(limit, unit, system, isFine(limit, unit))}`;
  return `${name}. ${place}: ${figures}`;
}

/** A finding told in full: measured against its limit to scale, whose limit, why it matters, what puts it right. */
export function ExplainedItem(props: {
  readonly row: ExplainedFinding;
  readonly system: LengthSystem;
  readonly onShow?: () => void;
}) {
  const { row, system, onShow } = props;
  const { measured, limit, unit, hazard } = row.finding;
  return (
    <>
      <h3 className={`bar ${styles.findingName}`}>
        <span className={styles.number}>{row.number}</span> {row.name} <HazardSign hazard={hazard} />
      </h3>
      <p className={styles.place}>{row.place}</p>
      {onShow && (
        <button type="button" aria-label={`Show it on the wall: ${row.number}, ${row.name}`} onClick={onShow}>
          Show it on the wall
        </button>
      )}
      <MeasureStrip
        measured={measured}
        words={measuredWords(row.finding, system)}
        limit={limit}
        unit={unit}
        end={measured > limit ? 'at most' : 'at least'}
        system={system}
      />
      <p className={`${styles.source} fine`}>{row.source}</p>
      <Terms
        className={styles.told}
        of={[
          ['What you see', row.looksLike],
          ['How it is measured', row.measuredBy],
          ['Why it matters', row.whyItMatters],
          ['What to do', ACT_REASONS[row.rightAct]],
          ['What puts it right', row.putsRight],
        ]}
      />
    </>
  );
}
