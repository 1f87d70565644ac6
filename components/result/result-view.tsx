'use client';

import Link from 'next/link';
import type { CheckId } from '../../lib/inspect/finding';
import type { LengthSystem } from '../../lib/units';
import { Caution } from '../forms/caution';
import { FalseMarkItem } from './false-mark-item';
import { FindingItem } from './finding-item';
import styles from './result.module.css';
import type { ResultRows } from './result-rows';
import { scoreOf100, scoreWords } from './score-words';

/** In a new wall these are a matter of looks; in an old one they are movement. */
const MOVEMENT: readonly CheckId[] = ['bulge-or-hollow', 'out-of-plumb'];

/** The result of a hand-in: a number and words, every fault, every false mark, and what to do next. */
export function ResultView(props: {
  readonly rows: ResultRows;
  readonly system: LengthSystem;
  /** Number of the row shown on the wall. */
  readonly shown: number | null;
  /** What to do next; null for set work, which is done once. */
  readonly again: { readonly nextHref: string; readonly onStartAgain: () => void } | null;
  readonly drawingCautions: readonly string[];
  readonly couldFallCautions: readonly string[];
  readonly onShow: (number: number) => void;
}) {
  const { rows, system, shown, again, onShow } = props;
  const couldFall = rows.findings.some(({ finding }) => finding.hazard === 'could fall');
  const moves = !couldFall && rows.findings.some(({ finding }) => MOVEMENT.includes(finding.check));
  return (
    <section className={styles.result} aria-labelledby="result-heading">
      <h2 id="result-heading" tabIndex={-1}>
        Result
      </h2>
      <p className={styles.score}>
        <strong>{scoreOf100(rows.score)}</strong> of 100
      </p>
      <p className={styles.words}>{scoreWords(rows)}</p>
      {couldFall && (
        <p className={styles.ruleLine}>
          The rule: while a fault that could make part of the wall fall is missed, the score stops at 50.
        </p>
      )}
      {rows.capped && <p className={styles.capped}>{rows.capped}</p>}
      {rows.repeats > 0 && (
        <p>
          {rows.repeats === 1 ? 'One mark says' : `${rows.repeats} marks say`} the same as another. Repeats
          count nothing and cost nothing.
        </p>
      )}
      {couldFall && <Caution word="Danger, on a real wall" lines={props.couldFallCautions} toSafety />}
      {moves && (
        <Caution word="Danger, if an old wall looks like this" lines={props.couldFallCautions} toSafety />
      )}
      {rows.findings.length > 0 && (
        <>
          <h3 className={styles.listTitle}>Faults on this wall</h3>
          <ul className={styles.list}>
            {rows.findings.map((row) => (
              <FindingItem
                key={row.number}
                row={row}
                system={system}
                isShown={shown === row.number}
                onShow={() => onShow(row.number)}
              />
            ))}
          </ul>
        </>
      )}
      {rows.findings.length === 0 && (
        <p>
          Every measurement on it is within the limits of the rule set in use. Sound walls come up often here,
          as they do on a site: saying “nothing wrong” is a skill too.
        </p>
      )}
      {rows.falseMarks.length > 0 && (
        <>
          <h3 className={styles.listTitle}>Marked, but within the limits</h3>
          <ul className={styles.list}>
            {rows.falseMarks.map((row) => (
              <FalseMarkItem
                key={row.number}
                row={row}
                system={system}
                isShown={shown === row.number}
                onShow={() => onShow(row.number)}
              />
            ))}
          </ul>
        </>
      )}
      {again && (
        <div className={styles.next}>
          <Link className="button" href={again.nextHref} prefetch={false}>
            Try another like it
          </Link>
          <button type="button" className="button button-plain" onClick={again.onStartAgain}>
            Lay this wall again
          </button>
        </div>
      )}
      <details className={styles.rule}>
        <summary>How the score is worked out</summary>
        <p>
          A fault that could fall counts three times, one that lets water in twice, one of looks once. The
          right place with another name counts half. A false mark costs half of what one fault is worth on
          average. A sound wall starts at 100, and each false mark takes 50 off.
        </p>
      </details>
      <Caution lines={props.drawingCautions} />
    </section>
  );
}
