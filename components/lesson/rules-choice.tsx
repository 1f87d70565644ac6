'use client';

import { type ChangeEvent, useEffect } from 'react';
import { chooseRules, isRulesInUse, useRulesInUse } from '../forms/rules-in-use';
import { Options } from '../ui/options';
import styles from './lesson.module.css';

/** Lets the reader choose by which rules the limits are shown. Hidden without script: then all of them are shown. */
export function RulesChoice({
  titles,
}: {
  readonly titles: readonly (readonly [id: string, title: string])[];
}) {
  const rules = useRulesInUse();
  useEffect(() => {
    // The style sheet reads it: limits are on the page for every rule set.
    document.documentElement.dataset.rules = rules;
  }, [rules]);
  const choose = ({ target }: ChangeEvent<HTMLSelectElement>) => {
    if (isRulesInUse(target.value)) chooseRules(target.value);
  };
  return (
    <label className={`bar ${styles.rules}`}>
      Show the limits of{' '}
      <select value={rules} onChange={choose}>
        <Options of={titles} />
        <option value="all">all rule sets, side by side</option>
      </select>
    </label>
  );
}
