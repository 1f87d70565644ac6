import { sourceOf } from '../../lib/limits/limits';
import type { Verdict } from '../../lib/photo/judge';
import type { Quantity } from '../../lib/photo/measure';
import { QUANTITY_WORDS } from '../../lib/photo/words';
import { formatInches, formatLength, inches, type LengthSystem, MM_PER_M } from '../../lib/units';
import styles from './photograph.module.css';

const VERDICTS: Readonly<Record<Verdict, string>> = {
  within: 'Within the limit',
  beyond: 'Beyond the limit',
  'cannot tell': 'This photograph cannot tell',
};
/** A slope is told over this in feet. */
const TEN_FEET = inches(0, 10);

/** All that was measured, each with how unsure it is, its limit, and what would settle it. */
export function MeasuredList({
  quantities,
  system,
}: {
  readonly quantities: readonly Quantity[];
  readonly system: LengthSystem;
}) {
  return (
    <ul className={styles.list}>
      {quantities.map(({ name, value, sd, unit, n, verdict, limit, settle }) => {
        const amount = (each: number) => (unit === 'mm' ? formatLength(each, system) : slope(each, system));
        return (
          <li key={name} data-verdict={limit && verdict}>
            <p className={styles.what}>{QUANTITY_WORDS[name]}</p>
            <p>
              <strong>{amount(value)}</strong>, give or take {amount(2 * sd)}. From {n}.
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
