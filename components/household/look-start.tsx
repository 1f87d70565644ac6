import { useId, useState } from 'react';
import { FIRST_WORDS, SAFETY_FIRST, WHOM } from '../../lib/household/first-words';
import type { Calls, Look } from '../../lib/household/look';
import type { Way } from '../../lib/household/note';
import { LengthChoice } from '../forms/length-choice';
import { chooseRules, useLengthsHere, useOneRuleSet } from '../forms/rules-in-use';
import { ChoiceBar } from '../ui/choice-bar';
import styles from './household.module.css';
import { KeptList } from './kept-list';
import { PlaceChoice } from './place-choice';
import type { Start } from './use-looks';

const WAY_CHOICES = [
  { value: 'finished', label: 'It is finished' },
  { value: 'wrong', label: 'Something is wrong with it' },
] as const;

/** Safety first, then whom to call, the place, and a look is begun; or one that is kept is opened again. */
export function LookStart(props: {
  readonly way: Way;
  readonly looks: readonly Look[];
  readonly onBegin: (start: Start) => void;
  readonly onRemove: (id: string) => void;
}) {
  const { looks, onBegin, onRemove } = props;
  const [way, setWay] = useState(props.way);
  const [name, setName] = useState('');
  const [calls, setCalls] = useState<Calls>(looks[0]?.calls ?? {});
  const rules = useOneRuleSet();
  const system = useLengthsHere();
  const id = useId();
  return (
    <>
      {looks.length > 0 && <KeptList {...{ looks, onRemove }} />}
      <h2>Safety first</h2>
      <div className="caution" role="note">
        <p className="caution-word">
          <span aria-hidden="true">⚠ </span>Take care
        </p>
        <ul>
          {SAFETY_FIRST.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
      <h2>Before you begin</h2>
      <ChoiceBar legend="The wall" options={WAY_CHOICES} value={way} onChoose={setWay} />
      {way === 'finished' && <p>{FIRST_WORDS}</p>}
      <PlaceChoice rules={rules} onChoose={chooseRules} />
      <LengthChoice system={system} />
      <p>
        <label htmlFor={`${id}-name`}>Name of the wall or the house, if you like</label>
        <br />
        <input
          id={`${id}-name`}
          type="text"
          autoComplete="off"
          maxLength={80}
          value={name}
          onChange={({ target }) => setName(target.value)}
        />
      </p>
      <fieldset className={styles.calls}>
        <legend>Whom to call. Look the numbers up now, so that you have them.</legend>
        {WHOM.map(([call, who, when]) => (
          <p key={call}>
            <label htmlFor={`${id}-${call}`}>
              {who} <span className="fine">{when}</span>
            </label>
            <input
              id={`${id}-${call}`}
              type="tel"
              autoComplete="off"
              maxLength={40}
              value={calls[call] ?? ''}
              onChange={({ target }) => setCalls({ ...calls, [call]: target.value })}
            />
          </p>
        ))}
      </fieldset>
      <p className="fine">
        It takes about ten minutes. You need a tape, a coin and a straight piece of wood, but you may leave
        out all that is measured. Your answers stay on this device.
      </p>
      <p>
        <button
          type="button"
          className="button"
          onClick={() => onBegin({ way, name: name.trim(), rules, calls })}
        >
          Begin the look round
        </button>
      </p>
    </>
  );
}
