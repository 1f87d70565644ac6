import type { BuildVerdict, Compared } from '../../../lib/drills/build/build-measures';
import type { LengthSystem } from '../../../lib/units';
import { formatMeasure } from '../../result/format-measure';
import styles from './build.module.css';

/** "✓ Within: 6.5 mm, at most 10 mm, 3.5 mm to spare". */
export function VerdictLine({
  verdict,
  system,
}: {
  readonly verdict: BuildVerdict;
  readonly system: LengthSystem;
}) {
  const { end, measured, bound, margin, passes, unit } = verdict;
  const measure = (value: number) => formatMeasure(value, unit, system);
  return (
    <p className={styles.verdict} data-passes={passes}>
      <strong>{passes ? '✓ Within' : '✕ Beyond'}</strong> {measure(measured)}; limit {end} {measure(bound)};{' '}
      {measure(Math.abs(margin))} {passes ? 'to spare' : end === 'at most' ? 'too much' : 'too little'}
    </p>
  );
}

/** All rule sets for one slider; those that ask the same from the same source stand together. */
export function ComparedList({
  rows,
  system,
}: {
  readonly rows: readonly Compared[];
  readonly system: LengthSystem;
}) {
  const measure = (value: number, unit: string) => formatMeasure(value, unit, system);
  const silent = rows.filter(({ verdicts }) => verdicts.length === 0).map(({ title }) => title);
  return (
    <>
      <ul className={`stack ${styles.compared}`}>
        {alike(rows).map(({ titles, verdict }) => {
          const { end, measured, bound, crossedAt, passes, unit, source } = verdict;
          return (
            <li key={`${titles.join()} ${verdict.limit}`} data-passes={passes}>
              <strong>{titles.join('; ')}</strong>
              <br />
              {passes ? '✓' : '✕'} {measure(measured, unit)}; limit {end} {measure(bound, unit)}. Crossed{' '}
              {end === 'at most' ? 'above' : 'below'} {measure(crossedAt, unit)}.
              <span className={styles.source}>{source}</span>
            </li>
          );
        })}
      </ul>
      {silent.length > 0 && <p>No limit for this: {silent.join('; ')}.</p>}
    </>
  );
}

type ComparedVerdict = Compared['verdicts'][number];

function alike(
  rows: readonly Compared[],
): readonly { readonly titles: readonly string[]; readonly verdict: ComparedVerdict }[] {
  const groups = new Map<string, { titles: string[]; verdict: ComparedVerdict }>();
  for (const { title, verdicts } of rows) {
    for (const verdict of verdicts) {
      const { limit, end, bound, measured, source } = verdict;
      const asked = [limit, end, bound, measured, source].join();
      const group = groups.get(asked);
      if (group) group.titles.push(title);
      else groups.set(asked, { titles: [title], verdict });
    }
  }
  return [...groups.values()];
}
