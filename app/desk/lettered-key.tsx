import { measuredInBoth } from '../../components/result/finding-measure';
import { isFine, measureInBoth } from '../../components/result/format-measure';
import type { Finding } from '../../lib/inspect/finding';
import { faultName } from '../../lib/wall-page/fault-choices';
import { CouldFall } from './could-fall';
import styles from './mark-book.module.css';
import { letterOf } from './plots/heat-wall';

/** What is wrong with the wall, lettered as the rings on the drawing. */
export function LetteredKey({
  findings,
  nameOf,
}: {
  readonly findings: readonly Finding[];
  readonly nameOf: (part: string) => string;
}) {
  if (findings.length === 0) return <p>Nothing is wrong with this wall: it is sound.</p>;
  return (
    <>
      <ol className={styles.pins} type="A" aria-label="Faults that are there">
        {findings.map((finding, index) => {
          const fine = isFine(finding.limit, finding.unit);
          const [part] = finding.parts;
          return (
            <li key={`${letterOf(index)}${finding.check}`}>
              <strong>{faultName(finding.check)}</strong>
              {part && `: ${nameOf(part).toLowerCase()}`}. Measured {measuredInBoth(finding)}, limit{' '}
              {measureInBoth(finding.limit, finding.unit, fine)}.
            </li>
          );
        })}
      </ol>
      <CouldFall findings={findings} />
    </>
  );
}
