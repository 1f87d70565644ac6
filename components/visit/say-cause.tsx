import { FURTHER_READINGS, type FurtherReading } from '../../lib/visit/further-readings';
import type { CauseAnswer } from '../../lib/visit/judge-cause';
import form from '../ui/form.module.css';
import { Options } from '../ui/options';
import { causeName, READING_WORDS } from './visit-words';

const NOT_YET = 'not-yet';
const READINGS = Object.keys(FURTHER_READINGS) as readonly FurtherReading[];

/** What has caused it, with the signs that carry it; or that it cannot be told yet, and what to read for it. */
export function SayCause(props: {
  readonly answer: CauseAnswer | null;
  readonly causes: readonly string[];
  /** Signs to choose from for the cause chosen. */
  readonly signs: readonly string[];
  readonly onSay: (answer: CauseAnswer) => void;
}) {
  const { answer, causes, signs, onSay } = props;
  const chosen = answer === null ? '' : (answer.cause ?? NOT_YET);
  return (
    <section aria-labelledby="cause-heading" className="stack tight">
      <h3 id="cause-heading">What does the evidence allow as the cause?</h3>
      <p className={form.field}>
        <label htmlFor="cause">The cause is</label>
        <select
          id="cause"
          value={chosen}
          onChange={({ target: { value } }) =>
            onSay(value === NOT_YET ? { cause: null, reading: null } : { cause: value, signs: [] })
          }
        >
          {chosen === '' && <option value="">Choose …</option>}
          <option value={NOT_YET}>Cannot tell yet</option>
          <Options of={causes.map((cause) => [cause, causeName(cause)])} />
        </select>
      </p>
      {answer?.cause === null && (
        <p className={form.field}>
          <label htmlFor="reading">To tell, read</label>
          <select
            id="reading"
            value={answer.reading ?? ''}
            onChange={({ target: { value } }) =>
              onSay({ cause: null, reading: READINGS.find((each) => each === value) ?? null })
            }
          >
            <option value="">Choose …</option>
            <Options of={READINGS.map((reading) => [reading, READING_WORDS[reading]])} />
          </select>
        </p>
      )}
      {answer !== null && answer.cause !== null && (
        <fieldset>
          <legend>Signs on this wall that carry it</legend>
          {signs.map((sign) => (
            <label key={sign} className="tick">
              <input
                type="checkbox"
                checked={answer.signs.includes(sign)}
                onChange={({ target: { checked } }) =>
                  onSay({
                    ...answer,
                    signs: checked ? [...answer.signs, sign] : answer.signs.filter((each) => each !== sign),
                  })
                }
              />
              <span>{sign}</span>
            </label>
          ))}
        </fieldset>
      )}
    </section>
  );
}
