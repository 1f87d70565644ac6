import { useId } from 'react';
import { RULE_SETS, type RuleSetId } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { Options } from '../ui/options';

const PLACES = RULE_SETS.map(
  (rules) =>
    [rules, rules === 'good-practice' ? 'Another place: good practice' : ruleSetTitle(rules)] as const,
);

/** Whose figures a wall is compared with. */
export function PlaceChoice(props: {
  readonly rules: RuleSetId;
  readonly onChoose: (rules: RuleSetId) => void;
}) {
  const id = useId();
  return (
    <p>
      <label htmlFor={id}>Where is the wall?</label>{' '}
      <select
        id={id}
        value={props.rules}
        onChange={({ target }) => {
          const chosen = RULE_SETS.find((rules) => rules === target.value);
          if (chosen !== undefined) props.onChoose(chosen);
        }}
      >
        <Options of={PLACES} />
      </select>
    </p>
  );
}
