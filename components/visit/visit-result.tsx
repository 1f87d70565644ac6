import type { LengthSystem } from '../../lib/units';
import { pointsLost, type VisitResult } from '../../lib/visit/grade-visit';
import type { OpenVisit } from '../../lib/visit/open-visit';
import { CauseTold } from './cause-told';
import { shownWords } from './shown-words';
import { ACT_WORDS, CONDITION_WORDS, causeName, MODE_WORDS } from './visit-words';

/** What a visit comes to: first what could have hurt somebody, then what was seen, then the cause. */
export function VisitResultView(props: {
  readonly result: VisitResult;
  readonly visit: OpenVisit;
  readonly nameOf: (part: string) => string;
  readonly system: LengthSystem;
  /** The code of the visit. */
  readonly code: string;
}) {
  const { result, visit, nameOf, system, code } = props;
  const lost = pointsLost(result);
  const safety = safetyLines(result, nameOf);
  return (
    <section aria-labelledby="result-heading" className="stack">
      <h2 id="result-heading" tabIndex={-1} data-stage-heading>
        {lost === 0 ? 'Nothing missed, nothing out of order' : `${lost} points lost`}
      </h2>
      <section aria-labelledby="safety-heading">
        <h3 id="safety-heading">Safety first</h3>
        {safety.length > 0 ? (
          <ul>
            {safety.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        ) : (
          <p>
            The ground was closed before anybody went near, nothing that hangs was touched, and the right
            people know.
          </p>
        )}
      </section>
      <section aria-labelledby="seen-heading">
        <h3 id="seen-heading">What is wrong with the wall</h3>
        <ul className="stack tight">
          {result.found.map(({ shown, isFound }) => (
            <li key={`${shown.condition} ${shown.parts[0]}`}>
              <strong>{isFound ? 'Found' : 'Missed'}:</strong> {shownWords(shown, nameOf, system)}
            </li>
          ))}
          {result.falseMarks.map(({ condition, part }) => (
            <li key={`${condition} ${part}`}>
              <strong>Not so:</strong> {CONDITION_WORDS[condition].toLowerCase()}, {nameOf(part)}
            </li>
          ))}
        </ul>
      </section>
      <section aria-labelledby="next-told-heading">
        <h3 id="next-told-heading">What may come down next</h3>
        <p>{nextWords(result, visit, nameOf)}</p>
        <p className="fine">
          Worked out on this drawing from published mean values. It says nothing of a real wall, where a
          licensed engineer decides.
        </p>
      </section>
      <CauseTold verdict={result.cause} causes={visit.causes} />
      <p>
        What the years did to this drawing: <strong>{causeName(visit.mechanism)}</strong>, {visit.years}{' '}
        years, seen in {visit.season}. Whoever wants to check the sums asks the command line:
      </p>
      <p>
        <code>{commandOf(code, visit)}</code>
      </p>
    </section>
  );
}

function safetyLines(result: VisitResult, nameOf: (part: string) => string): readonly string[] {
  const { orders, wrongActs, touched, undone } = result;
  return [
    ...orders.map(([first, then]) => `Too soon: “${ACT_WORDS[then]}” comes after “${ACT_WORDS[first]}”.`),
    ...wrongActs.map((act) => `Never: “${ACT_WORDS[act]}”.`),
    ...touched.map((part) => `Touched though it, or something above it, may come down: ${nameOf(part)}.`),
    ...undone.map((act) => `Not done today: “${ACT_WORDS[act]}”.`),
  ];
}

function nextWords(
  { isNextRight }: VisitResult,
  { risk }: OpenVisit,
  nameOf: (part: string) => string,
): string {
  const [first] = risk.next;
  if (first === undefined)
    return 'No unit hangs so loose here that one could be named. To keep people away all the same is right.';
  const names = risk.next.slice(0, 4).map(nameOf).join('; ');
  const which =
    risk.next.length === 1
      ? `${names} is held least.`
      : `${risk.next.length} units are held so nearly alike that nobody can say which comes first, and any of them is right: ${names}${risk.next.length > 4 ? ' and others' : ''}.`;
  const margin = risk.margins.find(({ part }) => part === first);
  const held =
    margin === undefined
      ? ''
      : ` The first ${MODE_WORDS[margin.mode]}: what holds it is ${margin.margin.toFixed(1)} times what draws on it.`;
  return `${isNextRight ? 'Right.' : 'No.'} ${which}${held}`;
}

/** What the command line is asked for the same wall, its state, margins and causes. */
function commandOf(code: string, { mechanism, years, season }: OpenVisit): string {
  return `npm run -s wall -- --code ${code} --mechanism ${mechanism} --years ${years} --season ${season} --json`;
}
