'use client';

import Link from 'next/link';
import { useState } from 'react';
import type { LengthSystem } from '../../lib/units';
import { HazardSign } from '../result/signs';
import { WallDrawing } from '../wall/wall-drawing';
import { ExplainedItem, findingLine } from './explained-finding';
import styles from './quick.module.css';
import type { QuickRow } from './quick-rows';

/** Every wall of the round with its key, what could fall and was missed first, then what else was answered wrongly. */
export function QuickResult({
  rows,
  system,
}: {
  readonly rows: readonly QuickRow[];
  readonly system: LengthSystem;
}) {
  const right = rows.filter(({ faulty, saidFaulty }) => faulty === saidFaulty).length;
  return (
    <section aria-labelledby="round-heading">
      <h2 id="round-heading" tabIndex={-1}>
        You were right on {right} of {rows.length} walls
      </h2>
      <p>
        Every wall with what was measured on it. Those you got wrong come first. Of them, what could fall
        stands on top.
      </p>
      <ol className={styles.rows}>
        {rows.map((row) => (
          <QuickItem key={row.number} row={row} system={system} />
        ))}
      </ol>
    </section>
  );
}

function QuickItem({ row, system }: { readonly row: QuickRow; readonly system: LengthSystem }) {
  const [seen, setSeen] = useState(false);
  const isRight = row.faulty === row.saidFaulty;
  return (
    <li className={styles.row} data-right={isRight}>
      <h3>
        Wall {row.number}: {isRight ? '✓ right' : '✕ wrong'}
      </h3>
      <p>
        You said “{row.saidFaulty ? 'something is wrong' : 'sound'}”. It is{' '}
        {row.faulty ? 'not sound.' : 'sound: every measurement is within its limit.'}
      </p>
      {row.findings.map((finding) => (
        <p key={finding.number} className={styles.finding}>
          {findingLine(finding, system)}. <HazardSign hazard={finding.finding.hazard} />
        </p>
      ))}
      <details onToggle={(event) => setSeen(event.currentTarget.open)}>
        <summary>Look at wall {row.number} again</summary>
        {seen && (
          <>
            <WallDrawing
              wall={row.wall}
              view={{ kind: 'front' }}
              marks={row.findings.map(({ finding, number }) => ({
                part: finding.parts[0] ?? finding.region.panel,
                number,
                state: 'mark' as const,
                ...finding.region,
              }))}
              dimensions={row.findings.map(({ finding, number }) => ({ ...finding, number }))}
              selected={null}
              layer="units"
              system={system}
              label={`Wall ${row.number} of the round`}
            />
            {row.findings.map((finding) => (
              <ExplainedItem key={finding.number} row={finding} system={system} />
            ))}
          </>
        )}
      </details>
      <p>
        <Link href={`/walls/${row.code}`} prefetch={false}>
          Open wall {row.code} as a full wall
        </Link>
      </p>
    </li>
  );
}
