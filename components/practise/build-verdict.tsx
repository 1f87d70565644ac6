import type { LimitKind } from '../../lib/limits/limit';
import type { LengthSystem } from '../../lib/units';
import { formatMeasure } from '../result/format-measure';
import styles from './build.module.css';

/** One measure held against one limit. */
export interface BuildVerdict {
  /** Name of the limit. */
  readonly limit: string;
  readonly end: 'at most' | 'at least';
  readonly measured: number;
  readonly bound: number;
  /** Negative: how far beyond. */
  readonly margin: number;
  readonly passes: boolean;
  readonly unit: string;
  readonly kind: LimitKind;
  readonly source: string;
}

/** What one rule set says of a slider. */
export interface Compared {
  readonly rules: string;
  readonly title: string;
  readonly verdicts: readonly (BuildVerdict & {
    /** Value of the slider at which the limit is met exactly: one step further it is crossed. */
    readonly crossedAt: number;
  })[];
}

/** "✓ Within: 6.5 mm, at most 10 mm, 3.5 mm to spare". */
export function VerdictLine({
  verdict,
  system,
}: {
  readonly verdict: BuildVerdict;
  readonly system: LengthSystem;
}) {
  const { end, measured, bound, margin, passes, unit } = verdict;
  const said = (value: number) => formatMeasure(value, unit, system);
  return (
    <p className={styles.verdict} data-passes={passes}>
      <strong>{passes ? '✓ Within' : '✕ Beyond'}</strong> {said(measured)}; limit {end} {said(bound)};{' '}
      {said(Math.abs(margin))} {passes ? 'to spare' : end === 'at most' ? 'too much' : 'too little'}
    </p>
  );
}

/** All rule sets side by side for one slider. */
export function ComparedTable(props: {
  readonly caption: string;
  readonly rows: readonly Compared[];
  readonly system: LengthSystem;
}) {
  const { caption, rows, system } = props;
  return (
    <div className={styles.scroll}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Rules</th>
            <th scope="col">Measured</th>
            <th scope="col">Limit</th>
            <th scope="col">Crossed</th>
            <th scope="col">Now</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ rules, title, verdicts }) =>
            verdicts.length === 0 ? (
              <tr key={rules}>
                <th scope="row">{title}</th>
                <td colSpan={4}>says nothing on this</td>
              </tr>
            ) : (
              verdicts.map(({ limit, end, measured, bound, crossedAt, passes, unit, source }) => (
                <tr key={`${rules} ${limit}`}>
                  <th scope="row">
                    {title}
                    <span className={styles.source}>{source}</span>
                  </th>
                  <td>{formatMeasure(measured, unit, system)}</td>
                  <td>
                    {end} {formatMeasure(bound, unit, system)}
                  </td>
                  <td>
                    {end === 'at most' ? 'above' : 'below'} {formatMeasure(crossedAt, unit, system)}
                  </td>
                  <td>{passes ? '✓ within' : '✕ beyond'}</td>
                </tr>
              ))
            ),
          )}
        </tbody>
      </table>
    </div>
  );
}
