'use client';

import Link from 'next/link';
import { useState } from 'react';
import type { QuickRow } from '../../../lib/drills/quick/quick-rows';
import type { LengthSystem } from '../../../lib/units';
import type { Draw } from '../../../lib/views/front/draw-front';
import { HazardSign } from '../../result/signs';
import { ExplainedItem, findingLine } from '../explained-finding';
import styles from './quick.module.css';
import { QuickDrawing } from './quick-drawing';

/** Every wall of the round with its key, what could fall and was missed first, then what else was answered wrongly. */
export function QuickResult({
  rows,
  system,
  draw,
}: {
  readonly rows: readonly QuickRow[];
  readonly draw: Draw;
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
      <ol className="stack">
        {rows.map((row) => (
          <QuickItem key={row.number} row={row} system={system} draw={draw} />
        ))}
      </ol>
    </section>
  );
}

function QuickItem(props: { readonly row: QuickRow; readonly system: LengthSystem; readonly draw: Draw }) {
  const { row, system, draw } = props;
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
            <QuickDrawing
              draw={draw}
              surveyed={row.surveyed}
              view={row.view}
              window={row.window}
              marks={row.findings.map(({ finding, number }) => ({
                part: finding.parts[0] ?? finding.region.panel,
                number,
                state: 'mark' as const,
                ...finding.region,
              }))}
              dimensions={
                row.view.kind === 'front'
                  ? row.findings.map(({ finding, number }) => ({ ...finding, number }))
                  : []
              }
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
