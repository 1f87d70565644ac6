import { type At, boundAt } from '../../lib/limits/bound';
import type { HowSure, Limit, RuleSetId } from '../../lib/limits/limit';
import { namedLimitOf, ruleSetTitle, sourceOf } from '../../lib/limits/limits';
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

/** A measured thing held to a limit of a rule set by its name; undefined where that set says nothing. */
export function heldTo(rules: RuleSetId, id: string, measured: number, at: At = {}) {
  const limit = namedLimitOf(rules, id);
  if (limit === undefined) return undefined;
  const bound = boundAt(limit, at);
  return { limit, bound, passes: isWithin(limit, measured, bound) };
}

/** A measured thing against a limit that is one number; nothing where the rule set says nothing. */
export function LimitVerdict(props: {
  readonly rules: RuleSetId;
  readonly id: string;
  readonly what: string;
  readonly measured: number;
  readonly at?: At;
  readonly show: (value: number) => string;
  /** Said once, after the bound. */
  readonly unit?: string;
}) {
  const { rules, id, what, measured, at, show, unit = '' } = props;
  const held = heldTo(rules, id, measured, at);
  if (held === undefined) return null;
  const { limit, bound, passes } = held;
  return (
    <VerdictItem
      {...{ limit, what, passes }}
      text={`${show(measured)}, ${limit.end} ${show(bound)}${unit}.`}
    />
  );
}

/** A measured thing against a limit: sign, word, and whose limit it is. */
export function VerdictItem(props: {
  readonly limit: Limit;
  readonly what: string;
  readonly passes: boolean;
  /** The measured value and the bound, in words. */
  readonly text: string;
}) {
  const { limit, what, passes, text } = props;
  return (
    <li className={passes ? styles.verdict : `${styles.verdict} ${styles.outside}`}>
      <p>
        <strong>
          <span aria-hidden="true">{passes ? '✓' : '✗'}</span> {what}:{' '}
          {passes ? 'within the limit' : 'outside the limit'}.
        </strong>{' '}
        {text}
      </p>
      <p className="fine">
        {limit.rules === 'good-practice' ? '' : `${ruleSetTitle(limit.rules)}. `}
        Kind of limit: {limit.kind}. {sourceOf(limit).title}, {limit.clause.replace(/\.$/, '')}. How sure:{' '}
        {SURE[limit.howSure]}.
      </p>
    </li>
  );
}
