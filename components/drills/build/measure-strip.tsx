import type { LengthSystem } from '../../../lib/units';
import { formatMeasure, isFine } from '../../result/format-measure';
import styles from './measure-strip.module.css';

/** A measure and its limit on one strip, to the same scale: solid as far as measured, a post at the limit. The words beside it say the same. */
export function MeasureStrip(props: {
  readonly measured: number;
  readonly limit: number;
  readonly unit: string;
  /** The measure in words, where the figure alone does not say what it is of. */
  readonly words?: string;
  readonly end: 'at most' | 'at least';
  readonly system: LengthSystem;
}) {
  const { measured, limit, unit, end, system } = props;
  const fine = isFine(limit, unit);
  const { words = formatMeasure(measured, unit, system, fine) } = props;
  const passes = end === 'at most' ? measured <= limit : measured >= limit;
  const whole = Math.max(measured, limit, Number.MIN_VALUE) * 1.15;
  const share = (value: number) => `${Math.round((value / whole) * 1000) / 10}%`;
  if (unit === 'there or not') {
    return (
      <p className={styles.words}>
        {passes ? 'It is there, as it must be.' : 'It is missing, and it must be there.'}
      </p>
    );
  }
  return (
    <div className={styles.measure}>
      <p className={styles.words}>
        Measured <strong>{words}</strong>. Limit: {end}{' '}
        <strong>{formatMeasure(limit, unit, system, fine)}</strong>.{' '}
        {passes ? '✓\u00a0Within' : '✕\u00a0Beyond'} by{' '}
        {formatMeasure(Math.abs(limit - measured), unit, system, fine)}.
      </p>
      <div className={styles.strip} aria-hidden="true">
        <div className={passes ? styles.within : styles.beyond} style={{ width: share(measured) }} />
        <div className={styles.post} style={{ left: share(limit) }} />
      </div>
    </div>
  );
}
