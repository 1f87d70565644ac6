import type { Mm } from '../units';
import type { Opening, Tie } from './model';
import { endId, type PartId } from './part-id';
import type { PanelSurvey } from './survey';

/** An upright edge of the veneer that ties must serve: a jamb of an opening, or a free end of a panel. */
export interface TieEdge {
  /** `A-window1` for a jamb, `A-left-end` or `A-right-end`. */
  readonly part: PartId;
  readonly x: Mm;
  /** +1: the veneer lies to the right of the edge; −1: to the left. */
  readonly side: 1 | -1;
  readonly fromY: Mm;
  readonly toY: Mm;
}

/** A gap between two ties of one column, and how far the neighbouring columns are. */
export interface TieGap {
  readonly x: Mm;
  readonly lower: Tie;
  readonly upper: Tie;
  readonly vertical: Mm;
  readonly horizontal: Mm;
  readonly leftX: Mm;
  readonly rightX: Mm;
}

interface Column {
  readonly x: Mm;
  readonly ties: readonly Tie[];
}

/** Jambs of openings larger than `small` either way, and free ends of the panel over their upright part. */
export function tieEdgesOf(survey: PanelSurvey, small: Mm): readonly TieEdge[] {
  const { panel } = survey;
  const edges: TieEdge[] = [];
  for (const opening of survey.openings) {
    if (opening.width <= small && opening.height <= small) continue;
    const span = { part: opening.id, fromY: opening.y, toY: opening.y + opening.height };
    edges.push({ ...span, x: opening.x, side: -1 }, { ...span, x: opening.x + opening.width, side: 1 });
  }
  const upright = panel.gable === null ? panel.courses : Math.min(panel.courses, panel.gable.fromCourse - 1);
  const top = (survey.courses[upright - 1] ?? []).reduce(
    (most, { unit }) => Math.max(most, unit.y - unit.fall / 2 + unit.height),
    0,
  );
  if (panel.leftEnd === 'free')
    edges.push({ part: endId(panel.id, 'left'), x: 0, side: 1, fromY: 0, toY: top });
  if (panel.rightEnd === 'free') {
    edges.push({ part: endId(panel.id, 'right'), x: panel.length, side: -1, fromY: 0, toY: top });
  }
  return edges;
}

/** Distance from an edge into the veneer; negative on the other side. */
export function awayFrom(edge: TieEdge, x: Mm): Mm {
  return (x - edge.x) * edge.side;
}

export function inSpan(edge: TieEdge, y: Mm): boolean {
  return y >= edge.fromY && y <= edge.toY;
}

/** How the ties beside an edge stand: those that serve it, and what is measured of them. */
export interface EdgeTies {
  readonly serving: readonly Tie[];
  /** With nothing serving: distance to the nearest tie. Else the greatest gap up the edge, its ends counted. */
  readonly measured: Mm;
}

/** Ties within `reach` of an edge, over its span. */
export function tiesAtEdge({ ties, panel }: PanelSurvey, edge: TieEdge, reach: Mm): EdgeTies {
  const beside = ties.filter((tie) => awayFrom(edge, tie.x) >= 0 && inSpan(edge, tie.y));
  const serving = beside.filter((tie) => awayFrom(edge, tie.x) <= reach);
  if (serving.length > 0) return { serving, measured: greatestGap(edge, serving) };
  return {
    serving,
    measured: beside.reduce((least, tie) => Math.min(least, awayFrom(edge, tie.x)), panel.length),
  };
}

function greatestGap(edge: TieEdge, serving: readonly Tie[]): Mm {
  const heights = [edge.fromY, ...serving.map(({ y }) => y).sort((a, b) => a - b), edge.toY];
  let greatest = 0;
  for (let index = 1; index < heights.length; index++) {
    greatest = Math.max(greatest, (heights[index] ?? 0) - (heights[index - 1] ?? 0));
  }
  return greatest;
}

/** Gaps up each column of ties, without those inside an opening and those beside a bare edge, which is a finding of its own (`reach`: how far it reaches). */
export function tieGapsOf(survey: PanelSurvey, bare: readonly TieEdge[], reach: Mm): readonly TieGap[] {
  const columns = columnsOf(survey);
  const gaps: TieGap[] = [];
  for (const [index, column] of columns.entries()) {
    const serves = bare.filter((edge) => awayFrom(edge, column.x) >= 0 && awayFrom(edge, column.x) <= reach);
    for (let each = 1; each < column.ties.length; each++) {
      const lower = column.ties[each - 1];
      const upper = column.ties[each];
      if (lower === undefined || upper === undefined) continue;
      const crossesOpening = survey.openings.some(
        (opening) =>
          column.x > opening.x &&
          column.x < opening.x + opening.width &&
          lower.y < opening.y + opening.height &&
          upper.y > opening.y,
      );
      const judgedAtEdge = serves.some((edge) => lower.y < edge.toY && upper.y > edge.fromY);
      if (crossesOpening || judgedAtEdge) continue;
      const left = neighbourX(columns[index - 1], column, survey.openings, lower.y, upper.y);
      const right = neighbourX(columns[index + 1], column, survey.openings, lower.y, upper.y);
      gaps.push({
        x: column.x,
        lower,
        upper,
        vertical: upper.y - lower.y,
        horizontal: Math.max(column.x - left, right - column.x),
        leftX: left,
        rightX: right,
      });
    }
  }
  return gaps;
}

/** The neighbouring column's x, or this column's own where there is none or an opening stands between over the whole gap. */
function neighbourX(
  other: Column | undefined,
  column: Column,
  openings: readonly Opening[],
  fromY: Mm,
  toY: Mm,
): Mm {
  if (other === undefined) return column.x;
  const from = Math.min(other.x, column.x);
  const to = Math.max(other.x, column.x);
  const parted = openings.some(
    (opening) =>
      opening.x < to &&
      opening.x + opening.width > from &&
      opening.y <= fromY &&
      opening.y + opening.height >= toY,
  );
  return parted ? column.x : other.x;
}

/** Ties by the nearest stud, left to right, each column bottom up. */
function columnsOf({ panel, ties }: PanelSurvey): readonly Column[] {
  const byStud = new Map<Mm, Tie[]>();
  for (const tie of ties) {
    let nearest = tie.x;
    let away = Number.POSITIVE_INFINITY;
    for (const stud of panel.studs) {
      if (Math.abs(stud - tie.x) < away) {
        away = Math.abs(stud - tie.x);
        nearest = stud;
      }
    }
    const column = byStud.get(nearest);
    if (column) column.push(tie);
    else byStud.set(nearest, [tie]);
  }
  return [...byStud.entries()]
    .sort(([a], [b]) => a - b)
    .map(([x, column]) => ({ x, ties: column.sort((a, b) => a.y - b.y) }));
}
