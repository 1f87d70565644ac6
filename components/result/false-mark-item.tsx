'use client';

import type { LengthSystem } from '../../lib/units';
import type { FalseRow, Within } from '../../lib/wall-page/result-rows';
import { formatMeasure, isFine } from './format-measure';
import styles from './result.module.css';
import { OutcomeSign } from './signs';

/** A mark at a place that is within its limits, and what was measured there. */
export function FalseMarkItem(props: {
  readonly row: FalseRow;
  readonly system: LengthSystem;
  readonly isShown: boolean;
  readonly onShow: () => void;
}) {
  const { row, system, isShown, onShow } = props;
  const { within } = row;
  return (
    <li className={styles.item} data-shown={isShown}>
      <div className={styles.top}>
        <OutcomeSign outcome="false" />
      </div>
      <h4>
        <span className={styles.number}>{row.number}</span> {row.faultName}
      </h4>
      <p className="fine">
        {row.place}
        {row.certainWrong && ' · you were certain'}
      </p>
      <button
        type="button"
        className={styles.show}
        aria-pressed={isShown}
        aria-label={`Show it on the wall: ${row.number}, ${row.faultName}`}
        onClick={onShow}
      >
        Show it on the wall
      </button>
      {within ? (
        <>
          <p>{withinWords(within, system)}</p>
          <p className="fine">{within.source}</p>
        </>
      ) : (
        <p>Nothing of this kind is out of its limit at this place.</p>
      )}
      {row.lookAlike && (
        <p>
          <strong>Looks wrong, is right.</strong> {row.lookAlike}
        </p>
      )}
    </li>
  );
}

/** A measurement within its limit, in words. */
export function withinWords(
  { value, limit, end, unit, isMean, offMean }: Within,
  system: LengthSystem,
): string {
  if (unit === 'there or not') return 'It is there, as it must be.';
  const words = (measure: number) => formatMeasure(measure, unit, system, isFine(limit, unit));
  const what = offMean ? ', off the mean of eight beds' : isMean ? ', as the mean of both ends' : '';
  return `Measured there${what}: ${words(value)}. The limit: ${end} ${words(limit)}. So it is within the limit.`;
}
