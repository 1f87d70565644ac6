import { useId } from 'react';
import { measuredInBoth } from '../../components/result/finding-measure';
import { isFine, measureInBoth } from '../../components/result/format-measure';
import { OutcomeSign } from '../../components/result/signs';
import { WallMarks } from '../../components/wall/wall-overlays';
import { WallFills, WallPicture } from '../../components/wall/wall-picture';
import { svgBox } from '../../lib/drawing/svg-nodes';
import type { Result } from '../../lib/exercise/result';
import type { RuleSetId } from '../../lib/limits/limit';
import { frontPicture } from '../../lib/views/front/front';
import type { SurveyedWall } from '../../lib/wall/surveyed';
import type { FalseRow, FindingRow } from '../../lib/wall-page/result-rows';
import { rowsOf } from '../../lib/wall-page/rows-of-result';
import { drawnResult } from '../walls/drawn-marks';
import { percentText } from './book-numbers';
import { CouldFall } from './could-fall';
import styles from './mark-book.module.css';
import plots from './plots/plots.module.css';
import { Head, SheetTable } from './sheet-table';

/** Width the numbers are sized for, px. */
const WIDTH = 560;

/** One learner's hand-in on one wall held up to daylight: every fault and every mark, what was measured and against which limit. */
export function LearnerWall({
  name,
  surveyed,
  rules,
  result,
}: {
  readonly name: string;
  readonly surveyed: SurveyedWall;
  readonly rules: RuleSetId;
  readonly result: Result;
}) {
  const prefix = `${useId()}-`;
  const rows = rowsOf(result, surveyed, rules);
  const drawing = frontPicture(surveyed);
  const [x, y, width, height] = svgBox(drawing.box);
  return (
    <>
      <h2>
        {name}: {percentText(rows.score)} %
      </h2>
      {rows.capped && <p>{rows.capped}</p>}
      <svg
        className={plots.wall}
        viewBox={`${x} ${y} ${width} ${height}`}
        role="img"
        aria-label={`The wall with the marks of ${name}. The table below says the same.`}
      >
        <WallFills wall={surveyed.wall} drawing={drawing} prefix={prefix} />
        <WallPicture drawing={drawing} prefix={prefix} part="all" />
        <WallMarks
          drawing={drawing}
          marks={drawnResult(rows, surveyed.parts)}
          mmPerPx={width / WIDTH}
          prefix={prefix}
        />
      </svg>
      {rows.findings.length + rows.falseMarks.length === 0 ? (
        <p>A sound wall, and nothing was marked on it.</p>
      ) : (
        <SheetTable
          caption="Faults there, then false marks"
          head={
            <>
              <Head>Ring</Head>
              <Head>Fault</Head>
              <Head>Where</Head>
              <Head>Measured</Head>
            </>
          }
        >
          <tbody>
            {rows.findings.map((row) => (
              <FoundRow key={row.number} row={row} />
            ))}
            {rows.falseMarks.map((row) => (
              <FalseMarkRow key={row.number} row={row} />
            ))}
          </tbody>
        </SheetTable>
      )}
      <CouldFall findings={rows.findings.map(({ finding }) => finding)} />
    </>
  );
}

function FoundRow({
  row: { number, outcome, texts, place, namedAs, finding, rulesTitle },
}: {
  readonly row: FindingRow;
}) {
  const limit = measureInBoth(finding.limit, finding.unit, isFine(finding.limit, finding.unit));
  return (
    <tr>
      <th scope="row">
        {number} <OutcomeSign outcome={outcome} />
      </th>
      <td>
        {texts.name}
        {namedAs && <span className={styles.note}>called “{namedAs}”</span>}
      </td>
      <td>{place}</td>
      <td className={styles.long}>
        {measuredInBoth(finding)}, limit {limit}
        <span className={styles.note}>
          {rulesTitle}, {finding.source.title}, {finding.source.clause}
        </span>
      </td>
    </tr>
  );
}

function FalseMarkRow({ row: { number, faultName, place, within, lookAlike } }: { readonly row: FalseRow }) {
  return (
    <tr>
      <th scope="row">
        {number} <OutcomeSign outcome="false" />
      </th>
      <td className={lookAlike ? styles.long : undefined}>
        {faultName}
        {lookAlike && <span className={styles.note}>{lookAlike}</span>}
      </td>
      <td>{place}</td>
      <td className={styles.long}>
        {within && within.unit !== 'there or not'
          ? `${measureInBoth(within.value, within.unit, isFine(within.limit, within.unit))}, limit ${within.end} ${measureInBoth(within.limit, within.unit, isFine(within.limit, within.unit))}: within it`
          : 'nothing of this kind is out of its limit here'}
        {within && <span className={styles.note}>{within.source}</span>}
      </td>
    </tr>
  );
}
