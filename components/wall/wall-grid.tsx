import { memo } from 'react';
import type { Drawing } from '../../lib/drawing/shape';
import { nodeOf, type SvgNode, turned } from '../../lib/drawing/svg-nodes';
import type { TargetRow } from '../../lib/views/pointing/targets';
import { pagePaint } from '../drawing/svg-element';
import styles from './wall-drawing.module.css';

/** Paths of faces by part, where the cell of a part is its face itself: one element a unit, not two. */
export type Faces = ReadonlyMap<string, SvgNode['attributes']>;

/** The faces of a drawing up close; null where it has none, or distance blurs them with all the rest. */
export function facesOf({ faces, haze, shapes }: Drawing, prefix: string): Faces | null {
  if (faces === undefined || haze !== undefined) return null;
  const paint = pagePaint(prefix);
  return new Map(
    faces.parts.flatMap((part, index) => {
      const shape = shapes[faces.first + index];
      return shape ? [[part, nodeOf(shape, paint).attributes] as const] : [];
    }),
  );
}

/** One row of things to point at, as cells of a grid over the drawing. The rows without the active cell are not drawn again. */
const Row = memo(function Row({
  row,
  number,
  active,
  selected,
  faces,
}: {
  readonly row: TargetRow;
  readonly number: number;
  readonly active: string | null;
  readonly selected: string | null;
  readonly faces: Faces | null;
}) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: a row of a grid drawn in SVG; its cells take the focus.
    <g role="row" aria-rowindex={number}>
      {row.targets.map(({ part, name, box }, index) => {
        const face = faces?.get(part);
        const cell = {
          role: 'gridcell',
          'aria-label': name,
          'aria-colindex': index + 1,
          'aria-selected': part === selected,
          tabIndex: part === active ? 0 : -1,
          'data-part': part,
        };
        if (face) return <path key={part} {...cell} {...face} className={styles.face} />;
        const { x, y, width, height } = box;
        const place = { x, y: turned(y + height), width, height };
        return <rect key={part} {...cell} {...place} className={styles.cell} />;
      })}
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
  faces,
}: {
  readonly rows: readonly TargetRow[];
  readonly label: string;
  readonly help: string;
  readonly active: string | null;
  readonly selected: string | null;
  readonly faces: Faces | null;
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
          faces={faces}
        />
      ))}
    </g>
  );
});

/** How to get about in the grid by the keyboard. */
export function GridHelp({ id }: { readonly id: string }) {
  return (
    <p id={id} className="visually-hidden">
      Arrow keys move along a course and from course to course. Home and End go to its ends, Page Up and Page
      Down five courses. Enter picks a part, Shift and Enter its whole course. Plus and minus zoom, 0 shows
      the whole wall.
    </p>
  );
}
