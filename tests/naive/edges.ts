import type { Panel, Wall } from '../../lib/wall/model';
import { courseOf } from './geometry';

/** An opening no wider and no higher than this, mm, has no edges of its own (IRC R703.8.4.1.1: 16 in). */
const SMALL_OPENING = 406;

/** An upright edge of a panel that must be tied, y from–to; `away` is the distance outward from the edge, negative beyond it. */
export interface Edge {
  readonly part: string;
  readonly from: number;
  readonly to: number;
  readonly away: (x: number) => number;
}

/** Both jambs of every opening that is not small, then the free ends. */
export function edgesOf(wall: Wall, panel: Panel): Edge[] {
  const edges: Edge[] = [];
  for (const opening of wall.openings) {
    if (opening.panel !== panel.id) continue;
    if (opening.width <= SMALL_OPENING && opening.height <= SMALL_OPENING) continue;
    const span = { part: opening.id, from: opening.y, to: opening.y + opening.height };
    edges.push({ ...span, away: (x) => opening.x - x });
    edges.push({ ...span, away: (x) => x - (opening.x + opening.width) });
  }
  const to = topOfUpright(wall, panel);
  if (panel.leftEnd === 'free') edges.push({ part: `${panel.id}-left-end`, from: 0, to, away: (x) => x });
  if (panel.rightEnd === 'free') {
    edges.push({ part: `${panel.id}-right-end`, from: 0, to, away: (x) => panel.length - x });
  }
  return edges;
}

/** Top of the highest course that does not yet step in: the greatest top of its units at their middles. */
function topOfUpright(wall: Wall, panel: Panel): number {
  const course = panel.gable === null ? panel.courses : Math.min(panel.courses, panel.gable.fromCourse - 1);
  return Math.max(0, ...courseOf(wall, panel.id, course).map(({ y, fall, height }) => y - fall / 2 + height));
}
