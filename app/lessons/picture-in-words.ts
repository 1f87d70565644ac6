import { overlaps } from '../../lib/geometry/box';
import { capital } from '../../lib/limits/format-amount';
import { formatLength, type LengthSystem } from '../../lib/units';
import { drawingOf } from '../../lib/views/draw-view';
import { unitMeasures } from '../../lib/views/pointing/part-measures';
import { partReadouts } from '../../lib/views/pointing/part-readouts';
import type { PartKind } from '../../lib/wall/part-id';
import { partName } from '../../lib/wall/part-names';
import type { Part } from '../../lib/wall/parts';
import { lettered, shownBox } from './draw-picture';
import { type LessonPicture, lessonWall, viewOf } from './lesson-pictures';

/** Parts that lie in rows, each row one line; openings and supports have a line of their own. */
const ROWS: Partial<Record<PartKind, string>> = {
  bed: 'bed joints',
  unit: 'units',
  head: 'head joints',
  tie: 'ties',
};

/**
 * A drawing for those who do not see it, row by row from the bottom, each row from the left: every part that shows, all told alike, as a
 * rule laid on it would read. Never whether it is right.
 */
export function inWords(picture: LessonPicture, system: LengthSystem): readonly string[] {
  const surveyed = lessonWall(picture);
  const { wall, parts: all } = surveyed;
  const view = viewOf(picture);
  const drawing = drawingOf(surveyed, view, system);
  const box = shownBox(picture, drawing);
  const readouts = partReadouts(surveyed, view, system);
  const measures = unitMeasures(surveyed, system);
  const says = ({ id, kind }: Part) =>
    kind === 'unit' ? (measures.get(id) ?? '') : (readouts.get(id) ?? '').replace(/^, /, '');
  const rows = new Map<string, Part[]>();
  const single = new Map<string, string>();
  for (const spot of drawing.spots) {
    const part = all.get(spot.part);
    if (part === undefined || !overlaps(spot, box)) continue;
    if (part.kind === 'opening' || part.kind === 'support') {
      single.set(part.id, `${partName(part, wall)}${readouts.get(part.id) ?? ''}`);
    } else if (ROWS[part.kind] !== undefined) {
      const key = `${part.panel} ${part.course} ${part.kind}`;
      const row = rows.get(key) ?? [];
      if (!row.some(({ id }) => id === part.id)) row.push(part);
      rows.set(key, row);
    }
  }
  const ordered = [...rows.values()].sort((a, b) => footOf(a) - footOf(b));
  const written = lettered(picture, drawing).map(({ text }) => text);
  return [
    ...ordered.map((row) => rowLine(row, wall.panels.length > 1, system, says)),
    ...single.values(),
    ...(written.length > 0 ? [`Written on the drawing: ${[...new Set(written)].join('; ')}`] : []),
  ];
}

function footOf(row: readonly Part[]): number {
  return Math.min(...row.map(({ y }) => y));
}

/** "Course 3, head joints: 8 times 10 mm wide, full; 2 mm wide, full; 9 times 10 mm wide, full". */
function rowLine(
  row: readonly Part[],
  ofSeveral: boolean,
  system: LengthSystem,
  says: (part: Part) => string,
): string {
  const [first] = row;
  if (first === undefined) return '';
  const { panel, course, kind, y, height } = first;
  const where =
    kind === 'tie' ? `${formatLength(Math.round(y + height / 2), system)} up` : `course ${course}`;
  const told = runs([...row].sort((a, b) => a.x - b.x).map(says));
  return capital(`${where}${ofSeveral ? `, wall ${panel}` : ''}, ${ROWS[kind]}: ${told}`);
}

/** Neighbours that read the same are said once, with their number. */
function runs(texts: readonly string[]): string {
  const told: { readonly text: string; readonly times: number }[] = [];
  for (const text of texts) {
    const last = told.at(-1);
    if (last?.text === text) told[told.length - 1] = { text, times: last.times + 1 };
    else told.push({ text, times: 1 });
  }
  return told.map(({ text, times }) => (times === 1 ? text : `${times} times ${text}`)).join('; ');
}
