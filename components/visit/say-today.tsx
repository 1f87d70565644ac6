import { TODAY_ACTS, type TodayAct } from '../../lib/visit/acts';
import { ACT_WORDS } from './visit-words';

/** What is done today, and whom one calls. */
export function SayToday(props: {
  readonly done: readonly TodayAct[];
  readonly onDone: (done: readonly TodayAct[]) => void;
}) {
  const { done, onDone } = props;
  return (
    <fieldset>
      <legend>
        <h3>What do you do today, and whom do you call?</h3>
      </legend>
      {TODAY_ACTS.map((act) => (
        <label key={act} className="tick">
          <input
            type="checkbox"
            checked={done.includes(act)}
            onChange={({ target: { checked } }) =>
              onDone(checked ? [...done, act] : done.filter((each) => each !== act))
            }
          />
          <span>{ACT_WORDS[act]}</span>
        </label>
      ))}
    </fieldset>
  );
}
