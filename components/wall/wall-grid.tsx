import { memo } from 'react';
import { turned } from '../../lib/views/svg-nodes';
import type { TargetRow } from '../../lib/views/targets';
import styles from './wall-drawing.module.css';

/** One row of things to point at, as cells of a grid over the drawing. The rows without the active cell are not drawn again. */
const Row = memo(function Row({
  row,
  number,
  active,
  selected,
}: {
  readonly row: TargetRow;
  readonly number: number;
  readonly active: string | null;
  readonly selected: string | null;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a row of a grid drawn in SVG; its cells take the focus.
    <g role="row" aria-rowindex={number}>
      {row.targets.map(({ part, name, box }, index) => (
        // biome-ignore lint/a11y/useSemanticElements: a table cell cannot be drawn in SVG.
        <rect
          key={part}
          role="gridcell"
          aria-label={name}
          aria-colindex={index + 1}
          aria-selected={part === selected}
          tabIndex={part === active ? 0 : -1}
          data-part={part}
          x={box.x}
          y={turned(box.y + box.height)}
          width={box.width}
          height={box.height}
          className={styles.cell}
        />
      ))}
    </g>
  );
});

/** The parts of one layer as a grid with one tab stop; rows from the bottom, as a mason counts. */
export const WallGrid = memo(function WallGrid({
  rows,
  label,
  help,
  active,
  selected,
}: {
  readonly rows: readonly TargetRow[];
  readonly label: string;
  readonly help: string;
  readonly active: string | null;
  readonly selected: string | null;
}) {
  const has = (row: TargetRow, part: string | null) =>
    part !== null && row.targets.some((each) => each.part === part);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a grid drawn in SVG; its cells take the focus.
    <g
      role="grid"
      aria-label={label}
      aria-describedby={help}
      aria-rowcount={rows.length}
      aria-readonly="true"
    >
      {rows.map((row, index) => (
        <Row
          key={row.key}
          row={row}
          number={index + 1}
          active={has(row, active) ? active : null}
          selected={has(row, selected) ? selected : null}
        />
      ))}
    </g>
  );
});
