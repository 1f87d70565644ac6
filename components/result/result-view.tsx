'use client';

import Link from 'next/link';
import type { CheckId, Finding } from '../../lib/inspect/finding';
import type { Reading } from '../../lib/instruments/reading';
import type { LengthSystem } from '../../lib/units';
import type { Side } from '../../lib/wall-page/place-file';
import type { FalseRow, FindingRow, ResultRows } from '../../lib/wall-page/result-rows';
import { Caution } from '../ui/caution';
import { FalseMarkItem } from './false-mark-item';
import { FindingItem } from './finding-item';
import { FiveMarksTable } from './five-marks';
import { LookAlikes, Tightest } from './look-alikes';
import styles from './result.module.css';
import { COULD_FALL_RULE, scoreOf100, scoreWords } from './score-words';

/** In a new wall these are a matter of looks; in an old one they are movement. */
const MOVEMENT: readonly CheckId[] = ['bulge-or-hollow', 'out-of-plumb'];

/** Address of the picture of a fault's place, as laid or sound. */
export type Picture = (finding: Finding, side: Side) => string;

/** One part of the result: faults, false marks, or both; nothing where it has none. */
function Items(props: {
  readonly title: string;
  readonly findings?: readonly FindingRow[];
  readonly falseMarks?: readonly FalseRow[];
  readonly notebook: readonly Reading[];
  readonly system: LengthSystem;
  readonly shown: number | null;
  readonly picture: Picture | null;
  readonly onShow: (number: number) => void;
}) {
  const { title, findings = [], falseMarks = [], notebook, system, shown, picture, onShow } = props;
  if (findings.length + falseMarks.length === 0) return null;
  const shared = (number: number) => ({
    system,
    isShown: shown === number,
    onShow: () => onShow(number),
  });
  return (
    <>
      <h3 className={styles.listTitle}>{title}</h3>
      <ul className="stack">
        {findings.map((row) => (
          <FindingItem
            {...shared(row.number)}
            key={row.number}
            row={row}
            notebook={notebook}
            picture={picture && ((side) => picture(row.finding, side))}
          />
        ))}
        {falseMarks.map((row) => (
          <FalseMarkItem {...shared(row.number)} key={row.number} row={row} />
        ))}
      </ul>
    </>
  );
}

/** The result of a hand-in: a number and words, every fault, every false mark, and what to do next. */
export function ResultView(props: {
  readonly rows: ResultRows;
  /** All that the reader noted on this wall. */
  readonly notebook: readonly Reading[];
  readonly system: LengthSystem;
  /** Number of the row shown on the wall. */
  readonly shown: number | null;
  /** Pictures of faulty places beside sound ones; null for set work, whose walls have no address. */
  readonly picture?: Picture | null;
  /** What comes next, and the way back to a wall without marks; null for set work, which is done once. */
  readonly again: {
    readonly next: { readonly href: string; readonly words: string };
    readonly onStartAgain: () => void;
  } | null;
  readonly drawingCautions: readonly string[];
  readonly couldFallCautions: readonly string[];
  readonly onShow: (number: number) => void;
}) {
  const { rows, notebook, system, shown, again, picture = null, onShow } = props;
  const couldFall = rows.findings.some(({ finding }) => finding.hazard === 'could fall');
  const missedFalls = rows.findings.filter(
    ({ outcome, finding }) => outcome === 'missed' && finding.hazard === 'could fall',
  );
  const certain = rows.findings.filter((row) => row.certainWrong);
  const shared = { notebook, system, shown, picture, onShow };
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
      {couldFall && <p className={`${styles.ruleLine} fine`}>{COULD_FALL_RULE}</p>}
      {rows.capped && <p className={styles.capped}>{rows.capped}</p>}
      <FiveMarksTable parts={rows.parts} />
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
      <Items title="Missed, and it could fall" {...shared} findings={missedFalls} />
      <Items
        title="You were certain, and it is not so"
        {...shared}
        findings={certain}
        falseMarks={rows.falseMarks.filter((row) => row.certainWrong)}
      />
      <Items
        title={missedFalls.length + certain.length > 0 ? 'The other faults' : 'Faults on this wall'}
        {...shared}
        findings={rows.findings.filter((row) => !missedFalls.includes(row) && !certain.includes(row))}
      />
      {rows.findings.length === 0 && (
        <p>
          Every measurement on it is within the limits of the rule set in use. Sound walls come up often here,
          as they do on a site: saying “nothing wrong” is a skill too.
        </p>
      )}
      <Items
        title="Marked, but within the limits"
        {...shared}
        falseMarks={rows.falseMarks.filter((row) => !row.certainWrong)}
      />
      <LookAlikes rows={rows} />
      {rows.tightest && <Tightest row={rows.tightest} system={system} />}
      {again && (
        <p className={styles.next}>
          <Link className="button" href={again.next.href} prefetch={false}>
            {again.next.words}
          </Link>
        </p>
      )}
      <details className={styles.rule}>
        <summary>How the score is worked out</summary>
        <p>
          A fault that could fall counts three times, one that lets water in twice, one of looks once. The
          right place with another name counts half. A false mark costs half of what one fault is worth on
          average. A sound wall starts at 100, and each false mark takes 50 off. Something that looks wrong
          and is right costs nothing, once for each kind, when you said to leave it. The score goes by place
          and name. Reading, requirement and act are marked apart, and only where you gave them.
        </p>
        {again && (
          <button type="button" className="button button-plain" onClick={again.onStartAgain}>
            Clear my answer and read this wall afresh
          </button>
        )}
      </details>
      <Caution lines={props.drawingCautions} />
    </section>
  );
}
