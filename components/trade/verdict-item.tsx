import type { HowSure, Limit } from '../../lib/limits/limit';
import { ruleSetTitle, sourceOf } from '../../lib/limits/limits';
import styles from './trade.module.css';

const SURE: Readonly<Record<HowSure, string>> = {
  read: 'read in the text or a faithful copy',
  'second-hand': 'second-hand',
  'worked out': 'worked out from the text',
  'common practice': 'common practice, no source',
  memory: 'from memory, not verified',
};

/** Rounding of a computed length: far below what any tool reads. */
const ROUNDING = 1e-6;

/** Whether a value is on the right side of a bound; the bound itself passes. */
export function isWithin(limit: Limit, measured: number, bound: number): boolean {
  return limit.end === 'at least' ? measured >= bound - ROUNDING : measured <= bound + ROUNDING;
}

/** A measured thing against a limit: sign, word, and whose limit it is. Without a limit it says that nothing is said. */
export function VerdictItem(props: {
  readonly limit: Limit | undefined;
  readonly what: string;
  readonly passes: boolean;
  /** The measured value and the bound, in words. */
  readonly text: string;
}) {
  const { limit, what, passes, text } = props;
  if (limit === undefined) {
    return <li className={`${styles.verdict} ${styles.silent}`}>{what}: no limit here says anything.</li>;
  }
  return (
    <li className={passes ? styles.verdict : `${styles.verdict} ${styles.outside}`}>
      <p>
        <strong>
          <span aria-hidden="true">{passes ? '✓' : '✗'}</span> {what}:{' '}
          {passes ? 'within the limit' : 'outside the limit'}.
        </strong>{' '}
        {text}
      </p>
      <p className={styles.source}>
        {limit.rules === 'good-practice' ? '' : `${ruleSetTitle(limit.rules)}. `}
        Kind of limit: {limit.kind}. {sourceOf(limit).title}, {limit.clause.replace(/\.$/, '')}. How sure:{' '}
        {SURE[limit.howSure]}.
      </p>
    </li>
  );
}
