import type { ReactNode } from 'react';
import { formatBound } from '../../lib/limits/format-bound';
import { RULE_SETS } from '../../lib/limits/limit';
import { ALL_LIMITS, ruleSetTitle } from '../../lib/limits/limits';
import { firstLengths, keepTogether } from '../limits/limit-words';
import { alike } from './limit-answer';
import answer from './limit-answer.module.css';

/** The limits of a lesson at a glance, each in one line, by the rule set in use as in the text. */
export function KeyFigures({ ids, title }: { readonly ids: readonly string[]; readonly title: ReactNode }) {
  return (
    <section aria-label="Key figures">
      {title}
      <ul className="plain">
        {ids.map((id) => (
          <li key={id}>
            {keepTogether(ALL_LIMITS.find((limit) => limit.id === id)?.quantity ?? id)}
            {alike(id).map(({ sets, limit }) => (
              <p key={sets[0]} className={answer.row} data-for={sets.join(' ')}>
                {sets.length < RULE_SETS.length && <span>{sets.map(ruleSetTitle).join('; ')}: </span>}
                <strong>
                  {limit === undefined
                    ? 'no figure'
                    : keepTogether(formatBound(limit, firstLengths(limit.rules))[0] ?? 'see the table')}
                </strong>
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
