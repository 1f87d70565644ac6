import { sourceOf } from '../../lib/limits/limits';
import type { PointMeasure } from '../../lib/photo/by-points';
import type { Verdict } from '../../lib/photo/judge';
import { formatInches, formatLength, inches, type LengthSystem, MM_PER_M } from '../../lib/units';
import styles from './photograph.module.css';

const VERDICTS: Readonly<Record<Verdict, string>> = {
  within: 'Within the limit',
  beyond: 'Beyond the limit',
  'cannot tell': 'This photograph cannot tell',
};
/** A slope is told over this in feet. */
const TEN_FEET = inches(0, 10);

/** What was measured, each with how unsure it is, its limit, and what would settle it. */
export function MeasuredList(props: {
  readonly measures: readonly (PointMeasure & { readonly what: string })[];
  readonly system: LengthSystem;
}) {
  const { measures, system } = props;
  return (
    <ul className={styles.list}>
      {measures.map(({ what, value, sd, unit, n, verdict, limit, settle }) => {
        const amount = (each: number) => (unit === 'mm' ? formatLength(each, system) : slope(each, system));
        return (
          <li key={what} data-verdict={limit && verdict}>
            <p className={styles.what}>{what}</p>
            <p>
              <strong>{amount(value)}</strong>, give or take {amount(2 * sd)}
              {n > 1 && `. From ${n}`}.
            </p>
            {limit && (
              <p>
                {VERDICTS[verdict]}. Limit: {ends(limit.least, limit.most, amount)} ({limit.limit.kind},{' '}
                {sourceOf(limit.limit).title}, {limit.limit.clause}).
              </p>
            )}
            {settle !== undefined && <p className="fine">{settle}</p>}
          </li>
        );
      })}
    </ul>
  );
}

function ends(
  least: number | undefined,
  most: number | undefined,
  amount: (value: number) => string,
): string {
  if (least === undefined) return `at most ${amount(most ?? 0)}`;
  return most === undefined ? `at least ${amount(least)}` : `${amount(least)} to ${amount(most)}`;
}

function slope(mmPerM: number, system: LengthSystem): string {
  return system === 'mm'
    ? `${formatLength(mmPerM, 'mm')} in a metre`
    : `${formatInches((mmPerM * TEN_FEET) / MM_PER_M)} in ten feet`;
}
