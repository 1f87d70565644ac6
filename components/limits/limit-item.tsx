import { formatBound } from '../../lib/limits/format-bound';
import type { Limit } from '../../lib/limits/limit';
import { sourceOf } from '../../lib/limits/limits';
import styles from './limit-item.module.css';
import { LimitTable } from './limit-tables';
import { firstLengths, HOW_SURE_WORDS, KIND_WORDS, keepTogether } from './limit-words';

/** One limit: what, how much, from where, how sure. `borrowed`: of good practice, shown under a rule set that is silent. */
export function LimitItem({
  limit,
  borrowed = false,
}: {
  readonly limit: Limit;
  readonly borrowed?: boolean;
}) {
  const { id, quantity, bound, kind, edition, clause, howSure, note, rules } = limit;
  const first = firstLengths(rules);
  const { newer } = sourceOf(limit);
  const practice = borrowed || kind === 'good practice';
  return (
    <li className={`${styles.item} target`} id={id}>
      <div>
        <h3 className={styles.quantity}>{quantity}</h3>
        {note !== undefined && <p className={styles.note}>{keepTogether(note)}</p>}
      </div>
      <div className={styles.asked}>
        {formatBound(limit, first).map((line) => (
          <p key={line} className={styles.line}>
            {keepTogether(line)}
          </p>
        ))}
        <LimitTable bound={bound} name={quantity} first={first} />
      </div>
      <p className={styles.from}>
        <span className={practice ? 'tag tag-practice' : 'tag'}>
          {borrowed ? 'Good practice' : KIND_WORDS[kind]}
        </span>{' '}
        {edition}, {clause.replace(/\.$/, '')}.{' '}
        <span className={howSure === 'memory' ? styles.memory : undefined}>{HOW_SURE_WORDS[howSure]}.</span>
        {newer !== undefined && ` A newer edition is out, and was not read: ${newer}.`}
      </p>
    </li>
  );
}
