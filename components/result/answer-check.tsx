import type { LimitKind } from '../../lib/limits/limit';
import type { Act } from '../../lib/marking/act';
import type { Verdict } from '../../lib/marking/five-marks';
import type { LengthSystem } from '../../lib/units';
import type { FindingRow } from '../../lib/wall-page/result-rows';
import { measuredWords, offTheMean } from './finding-measure';
import { formatMeasure, isFine } from './format-measure';
import styles from './result.module.css';

/** Why an act is the right one: the rule, said each time. */
export const ACT_REASONS: Readonly<Record<Act, string>> = {
  leave: 'Leave it. It looks wrong and is right.',
  'put right now': 'Put it right now. All of it is in sight.',
  'open up further': 'Open up further. Where there is one there are likely more out of sight.',
  'make safe and call':
    'Make safe and call a competent person. What could fall comes before everything else.',
};

const KIND_NAMES: Readonly<Record<LimitKind, string>> = {
  'code minimum': 'a code minimum',
  'standard tolerance': 'a standard’s tolerance',
  'good practice': 'good practice',
  looks: 'a matter of looks',
};

const SIGNS: Readonly<Record<Verdict, string>> = {
  right: '✓ Right',
  wrong: '✗ Not so',
  // Given under another name, or in another unit: it speaks of something else.
  'not given': 'Not marked',
};

/** What the reader said of a fault beside what is so: reading, requirement, act, as far as anything was said. */
export function AnswerCheck({ row, system }: { readonly row: FindingRow; readonly system: LengthSystem }) {
  const { finding, answer, verdicts, rightAct } = row;
  if (Object.keys(answer).length === 0) return null;
  return (
    <dl className={`stack tight ${styles.answers}`}>
      <Line term="Your reading" verdict={verdicts.measured} given={answer.reading !== undefined}>
        {readingWords(row, system)}
      </Line>
      <Line term="Which requirement" verdict={verdicts.judged} given={answer.kind !== undefined}>
        {verdicts.judged === 'wrong' && answer.kind !== undefined && `You said ${KIND_NAMES[answer.kind]}. `}
        It is {KIND_NAMES[finding.kind]}.
      </Line>
      <Line term="What to do" verdict={verdicts.acted} given={answer.act !== undefined}>
        {answer.act !== undefined && verdicts.acted === 'wrong' && `You said: ${answer.act}. `}
        {ACT_REASONS[rightAct]}
      </Line>
    </dl>
  );
}

function Line(props: {
  readonly term: string;
  readonly verdict: Verdict;
  readonly given: boolean;
  readonly children: React.ReactNode;
}) {
  const { term, verdict, given, children } = props;
  if (!given) return null;
  return (
    <div data-verdict={verdict}>
      <dt>
        {term} <span>{SIGNS[verdict]}</span>
      </dt>
      <dd>{children}</dd>
    </div>
  );
}

function readingWords({ finding, answer, verdicts, within }: FindingRow, system: LengthSystem): string {
  const { unit, limit } = finding;
  const fine = isFine(limit, unit);
  const words = (value: number) => formatMeasure(value, unit, system, fine);
  const measured = measuredWords(finding, system);
  if (answer.reading === undefined) return `Measured: ${measured}.`;
  const both = `You read ${words(answer.reading)}, measured ${measured}`;
  if (unit === 'there or not' || verdicts.measured === 'not given') return `${both}.`;
  return verdicts.measured === 'right'
    ? `${both}. Near enough.`
    : `${both}. It has to come within ${words(within)}.${offTheMean(finding) ? ' The gauge rod reads it; the joint gauge reads the bed alone.' : ''}`;
}
