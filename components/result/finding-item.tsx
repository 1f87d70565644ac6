'use client';

import Link from 'next/link';
import type { Finding } from '../../lib/inspect/finding';
import type { Reading } from '../../lib/instruments/reading';
import { capital } from '../../lib/limits/format-amount';
import type { HowSure } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import type { Side } from '../../lib/wall-page/place-file';
import type { FindingRow } from '../../lib/wall-page/result-rows';
import { Terms } from '../ui/terms';
import { ACT_REASONS, AnswerCheck } from './answer-check';
import { measuredWords } from './finding-measure';
import { formatBeyond, formatMeasure, isFine } from './format-measure';
import styles from './result.module.css';
import { HazardSign, OutcomeSign } from './signs';

const HOW_SURE_WORDS: Readonly<Record<HowSure, string>> = {
  read: 'read in the text',
  'second-hand': 'read second-hand, not in the text itself',
  'worked out': 'worked out from the text',
  'common practice': 'common practice, without a source',
  memory: 'not verified',
};

/** One fault of the wall: what became of it, what was measured, whose limit it breaks, and what to do. */
export function FindingItem(props: {
  readonly row: FindingRow;
  /** All that the reader noted on this wall. */
  readonly notebook: readonly Reading[];
  readonly system: LengthSystem;
  readonly isShown: boolean;
  /** Address of the picture of its place on either wall; null where there is none. */
  readonly picture: ((side: Side) => string) | null;
  readonly onShow: () => void;
}) {
  const { row, notebook, system, isShown, picture, onShow } = props;
  const isFound = row.outcome === 'found' || row.outcome === 'wrong name';
  const { finding, texts, namedAs } = row;
  const { measured, limit, unit, source } = finding;
  const fine = isFine(limit, unit);
  const beyond = formatBeyond(measured, limit, unit, system, fine);
  const end = measured > limit ? 'At most' : 'At least';
  return (
    <li className={styles.item} data-shown={isShown}>
      <div className={styles.top}>
        <OutcomeSign outcome={row.outcome} />
        <HazardSign hazard={finding.hazard} />
      </div>
      <h4>
        <span className={styles.number}>{row.number}</span> {texts.name}
      </h4>
      <p className="fine">{row.place}</p>
      {namedAs && (
        <p>
          You called it “{namedAs}”{row.certainWrong && ', and were certain'}. The place was right, so it
          counts half.
        </p>
      )}
      {row.note && <p>{row.note}</p>}
      <button
        type="button"
        className={styles.show}
        aria-pressed={isShown}
        aria-label={`Show it on the wall: ${row.number}, ${texts.name}`}
        onClick={onShow}
      >
        Show it on the wall
      </button>
      {picture && (
        <div className={styles.beside}>
          <figure>
            {/* biome-ignore lint/performance/noImgElement: a drawing; there is nothing to resize */}
            <img src={picture('as-laid')} alt={`${texts.name}, on this wall`} width={480} height={320} />
            <figcaption>This wall</figcaption>
          </figure>
          <figure>
            {/* biome-ignore lint/performance/noImgElement: a drawing; there is nothing to resize */}
            <img src={picture('sound')} alt="The same place, built right" width={480} height={320} />
            <figcaption>The same place, sound</figcaption>
          </figure>
        </div>
      )}
      <Terms
        className={styles.figures}
        of={[
          ['Measured', measuredWords(finding, system)],
          [
            'Limit',
            unit === 'there or not' ? 'Must be there' : `${end} ${formatMeasure(limit, unit, system, fine)}`,
          ],
          ...(beyond ? [[end === 'At most' ? 'Too much by' : 'Too little by', beyond] as const] : []),
        ]}
      />
      <NotedHere {...{ finding, notebook, system }} />
      {isFound && <AnswerCheck row={row} system={system} />}
      <Terms
        className={styles.texts}
        of={[
          ['Why it matters', texts.whyItMatters],
          ...(isFound && row.answer.act !== undefined
            ? []
            : [['What to do', ACT_REASONS[row.rightAct]] as const]),
        ]}
      />
      <details className={styles.more}>
        <summary>The rule, and how to measure and mend it</summary>
        <p className="fine">
          {row.standsIn && `${row.rulesTitle}: the rule set in use says nothing on this. `}
          {!(row.standsIn && finding.kind === 'good practice') && `${capital(finding.kind)}. `}
          {sourceWords(source)} ({HOW_SURE_WORDS[source.howSure]}).
        </p>
        <p>{texts.looksLike}</p>
        <p>{texts.measuredBy}</p>
        <Terms
          className={styles.texts}
          of={[
            ['What puts it right', texts.putsRight],
            ['When it could have been caught', texts.caughtAt],
          ]}
        />
      </details>
      <p className={styles.links}>
        <Link href={row.lesson} prefetch={false}>
          The lesson on this
        </Link>
      </p>
    </li>
  );
}

/** What the reader's instruments said at this place, beside what was measured: also where the fault was missed. */
function NotedHere(props: {
  readonly finding: Finding;
  readonly notebook: readonly Reading[];
  readonly system: LengthSystem;
}) {
  const { finding, notebook, system } = props;
  const here = notebook.filter(
    ({ part, unit, value }) =>
      value !== null && unit === finding.unit && finding.parts.some((each) => each === part),
  );
  if (here.length === 0) return null;
  return (
    <p>
      <strong>In your notebook.</strong>{' '}
      {here
        .map(({ what, value, fine }) => `${what}: ${formatMeasure(value ?? 0, finding.unit, system, fine)}.`)
        .join(' ')}
    </p>
  );
}

/** Title, edition and clause, each said once: many titles name their edition. */
function sourceWords({ title, edition, clause }: Finding['source']): string {
  return [title, edition, clause]
    .filter(
      (part, index, all) =>
        part !== '' &&
        !all.slice(0, index).some((before) => before.toLowerCase().includes(part.toLowerCase())),
    )
    .join(', ');
}
