import type { RuleSetId } from '../../lib/limits/limit';
import type { Panel, Wall } from '../../lib/wall/model';
import { numberOf } from './bounds';
import { courseOf } from './geometry';
import { isOver } from './naive-finding';

/** An upright edge of a panel that must be tied, y from–to; `away` is the distance outward from the edge, negative beyond it. */
export interface Edge {
  readonly part: string;
  readonly from: number;
  readonly to: number;
  readonly x: number;
  /** The masonry lies to the right of it, or to the left. */
  readonly isLeft: boolean;
  readonly away: (x: number) => number;
}

/** Both jambs of every opening that is not small, then the free ends. */
export function edgesOf(wall: Wall, rules: RuleSetId, panel: Panel): Edge[] {
  const small = numberOf(rules, 'tie-opening') ?? 0;
  const edges: Edge[] = [];
  for (const opening of wall.openings) {
    if (opening.panel !== panel.id) continue;
    if (!isOver(opening.width, small) && !isOver(opening.height, small)) continue;
    const span = { part: opening.id, from: opening.y, to: opening.y + opening.height };
    edges.push({ ...span, x: opening.x, isLeft: false, away: (x) => opening.x - x });
    const right = opening.x + opening.width;
    edges.push({ ...span, x: right, isLeft: true, away: (x) => x - right });
  }
  const to = topOfUpright(wall, panel);
  if (panel.leftEnd === 'free')
    edges.push({ part: `${panel.id}-left-end`, from: 0, to, x: 0, isLeft: true, away: (x) => x });
  if (panel.rightEnd === 'free') {
    edges.push({
      part: `${panel.id}-right-end`,
      from: 0,
      to,
      x: panel.length,
      isLeft: false,
      away: (x) => panel.length - x,
    });
  }
  return edges;
}

/** Top of the highest course that does not yet step in: the greatest top of its units at their middles. */
function topOfUpright(wall: Wall, panel: Panel): number {
  const course = panel.gable === null ? panel.courses : Math.min(panel.courses, panel.gable.fromCourse - 1);
  return Math.max(0, ...courseOf(wall, panel.id, course).map(({ y, fall, height }) => y - fall / 2 + height));
}
