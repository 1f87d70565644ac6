import { type Drawing, type Label, labelAt, moved, type Shape } from '../../drawing/shape';
import { type LoadPath, loadsOn } from '../../failing/margins/loads';
import type { FailingWall } from '../../failing/state/model';
import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import type { UnitId } from '../../wall/part-id';

/** The greatest force is drawn this wide; every other in proportion, so that widths can be compared. */
const WIDEST: Mm = 34;
const FINEST: Mm = 1.5;
const PAINT = '#1d4ed8';
const EDGE = '#ffffff';
/** Paths are followed so many units up and down from the one asked about. */
const COURSES = 3;

/** The drawing with what a unit carries and what carries it: an arrow for each path, its width in proportion to the force. */
export function withLoads(drawing: Drawing, failing: FailingWall, part: UnitId): Drawing {
  const paths: LoadPath[] = [];
  loadsOn(failing, (path) => paths.push(path));
  const near = [...followed(paths, part, 'to', 'from'), ...followed(paths, part, 'from', 'to')];
  const greatest = Math.max(...near.map(({ force }) => force), 1);
  const units = new Map(failing.survey.wall.units.map((unit) => [unit.id, unit]));
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  for (const path of near) {
    const unit = units.get(path.from);
    const frame = drawing.frames.find(({ panel }) => panel === unit?.panel);
    if (unit === undefined || frame === undefined) continue;
    shapes.push(
      moved(arrow(unit, path, Math.max(FINEST, (WIDEST * path.force) / greatest)), frame.x, frame.y),
    );
    if (path.from === part || path.to === part) {
      const text = `${Math.round(path.force)} N`;
      labels.push({ ...labelAt(frame.x + path.x, frame.y + unit.y, text), plate: true, rise: 0.9 });
    }
  }
  return { ...drawing, shapes: [...drawing.shapes, ...shapes], labels: [...drawing.labels, ...labels] };
}

/** The paths that lead from a unit on, unit by unit: up with `to` and `from`, down the other way about. */
function followed(
  paths: readonly LoadPath[],
  part: UnitId,
  here: 'to' | 'from',
  there: 'to' | 'from',
): readonly LoadPath[] {
  const found: LoadPath[] = [];
  let at = new Set<string>([part]);
  for (let course = 0; course < COURSES; course++) {
    const next = paths.filter((path) => at.has(path[here]));
    found.push(...next);
    at = new Set(next.map((path) => path[there]));
  }
  return found;
}

/** From the middle of the unit down past its bed, its head twice as wide as its shaft. */
function arrow({ y, height }: Unit, { x }: LoadPath, wide: Mm): Shape {
  const [from, foot] = [y + height / 2, y - height / 4];
  const neck = Math.min(from, foot + wide);
  const half = wide / 2;
  return {
    kind: 'area',
    rings: [
      [
        [x - half, from],
        [x + half, from],
        [x + half, neck],
        [x + wide, neck],
        [x, foot],
        [x - wide, neck],
        [x - half, neck],
      ],
    ],
    fill: PAINT,
    opacity: 0.85,
    pen: { paint: EDGE, width: 1, thin: true },
  };
}
