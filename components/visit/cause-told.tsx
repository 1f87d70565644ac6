import type { Weighed } from '../../lib/failing/causes/causes';
import { FURTHER_READINGS, type FurtherReading, tellsApart } from '../../lib/visit/further-readings';
import type { CauseVerdict } from '../../lib/visit/judge-cause';
import { causeName, READING_WORDS } from './visit-words';

const READINGS = Object.keys(FURTHER_READINGS) as readonly FurtherReading[];

/** What the evidence says of the cause that was named, and what it allows. */
export function CauseTold({
  verdict,
  causes,
}: {
  readonly verdict: CauseVerdict;
  readonly causes: readonly Weighed[];
}) {
  const allowed = causes.filter(({ inK }) => inK);
  const splits = READINGS.filter((reading) =>
    tellsApart(
      reading,
      allowed.map(({ cause }) => cause),
    ),
  );
  return (
    <section aria-labelledby="cause-told-heading" className="stack tight">
      <h3 id="cause-told-heading">The cause</h3>
      <p>{verdictWords(verdict)}</p>
      <p>The signs on this wall allow {allowed.length === 1 ? 'one cause' : `${allowed.length} causes`}:</p>
      <ul>
        {allowed.map(({ cause, needs }) => (
          <li key={cause}>
            <strong>{causeName(cause)}</strong>, by {needs.map(({ sign }) => sign).join('; ')}.
          </li>
        ))}
      </ul>
      {allowed.length > 1 && splits.length > 0 && (
        <p>To tell them apart, read {splits.map((reading) => READING_WORDS[reading]).join(', or ')}.</p>
      )}
    </section>
  );
}

function verdictWords(verdict: CauseVerdict): string {
  switch (verdict.kind) {
    case 'the cause':
      return `Right: no other is allowed.${signWords(verdict)}`;
    case 'one of several':
      return `It may be, but that goes beyond the evidence: another cause is allowed too.${signWords(verdict)}`;
    case 'barred':
      return `No: this wall shows a sign that rules it out, ${verdict.by}.`;
    case 'lacks':
      return `No: it needs a sign that this wall does not show, ${verdict.need}.`;
    case 'told apart':
      return 'Right: it cannot be told yet, and that reading tells them apart.';
    case 'would not tell':
      return 'You are right that it cannot be told yet, but the reading you chose would come out the same for every cause that is left.';
    case 'could be told':
      return 'That is careful and costs no points, but here the signs leave only one cause.';
    default: {
      const unknown: never = verdict;
      throw new RangeError(`verdict ${String(unknown)} has no words`);
    }
  }
}

function signWords({ unnamed, notSo }: Extract<CauseVerdict, { readonly named: readonly string[] }>): string {
  return [
    ...(unnamed.length > 0 ? [` It is carried by ${unnamed.join('; ')} too.`] : []),
    ...(notSo.length > 0 ? [` No sign of it on this wall: ${notSo.join('; ')}.`] : []),
  ].join('');
}
