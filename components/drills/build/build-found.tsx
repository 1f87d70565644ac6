import type { ExplainedFinding } from '../../../lib/drills/explained-finding';
import type { LengthSystem } from '../../../lib/units';
import { HazardSign } from '../../result/signs';
import { findingLine } from '../explained-finding';
import styles from './build.module.css';

/** What is beyond a limit now. */
export function BuildFound({
  findings,
  system,
}: {
  readonly findings: readonly ExplainedFinding[];
  readonly system: LengthSystem;
}) {
  return (
    <>
      <p role="status">{countWords(findings.length)}</p>
      {findings.length > 0 && (
        <ul className={`stack tight ${styles.found}`}>
          {findings.map((row) => (
            <li key={row.number} className="panel">
              {row.number}. {findingLine(row, system)}. <HazardSign hazard={row.finding.hazard} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function countWords(count: number): string {
  if (count === 0) return 'The wall is sound: no limit is crossed.';
  return count === 1 ? 'One limit is crossed.' : `${count} limits are crossed.`;
}
