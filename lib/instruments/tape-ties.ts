import type { Mm } from '../units';
import type { PanelSurvey } from '../wall/survey';
import { type TieEdge, tieEdgesOf, tieGapsOf, tiesAtEdge } from '../wall/tie-field';
import type { ReadMm } from './read-off';
import type { Reading } from './reading';

/** A tape is held to the jamb of any opening, whether it needs ties or not. */
const ANY_OPENING: Mm = 0;

/** Ties on the edge's own stud are within this of the nearest one, mm. */
const ONE_LINE: Mm = 60;

/** Of a tie: its width, its length in the bed and what is left of the depth of the units; the next tie up and down its stud, and the next stud with ties on either hand. */
export function tieReadings(id: string, panel: PanelSurvey, depth: Mm, mm: ReadMm): readonly Reading[] {
  const tie = panel.ties.find((each) => each.id === id);
  if (tie === undefined) return [];
  const stud = studOf(tie.x, panel);
  const column = panel.ties.filter(({ x }) => studOf(x, panel) === stud);
  const studs = panel.ties.map(({ x }) => studOf(x, panel));
  return [
    mm('Length in the bed', tie.embedment),
    mm('From its end to the face', depth - tie.embedment),
    mm('Width of the strap', tie.width),
    ...next(
      'Next tie up',
      column.map(({ y }) => y - tie.y),
      mm,
    ),
    ...next(
      'Next tie down',
      column.map(({ y }) => tie.y - y),
      mm,
    ),
    ...next(
      'Next stud with ties, left',
      studs.map((x) => stud - x),
      mm,
    ),
    ...next(
      'Next stud with ties, right',
      studs.map((x) => x - stud),
      mm,
    ),
  ];
}

/** Of a panel: the widest gap up a stud, and the widest from stud to stud, both between ties and not over an opening. */
export function panelTieReadings(panel: PanelSurvey, mm: ReadMm): readonly Reading[] {
  const gaps = tieGapsOf(panel, [], 0);
  if (gaps.length === 0) return [];
  return [
    mm('Widest gap between ties, up a stud', Math.max(...gaps.map(({ vertical }) => vertical))),
    mm('Widest gap between ties, stud to stud', Math.max(...gaps.map(({ horizontal }) => horizontal))),
  ];
}

/** Of an opening: the nearest tie to each jamb, and the widest gap up it. */
export function jambTieReadings(opening: string, panel: PanelSurvey, mm: ReadMm): readonly Reading[] {
  return tieEdgesOf(panel, ANY_OPENING)
    .filter(({ part }) => part === opening)
    .flatMap((edge) => edgeReadings(edge, edge.side === -1 ? ' left jamb' : ' right jamb', panel, mm));
}

export function edgeTieReadings(id: string, panel: PanelSurvey, mm: ReadMm): readonly Reading[] {
  return tieEdgesOf(panel, ANY_OPENING)
    .filter(({ part }) => part === id)
    .flatMap((edge) => edgeReadings(edge, ' this end', panel, mm));
}

function edgeReadings(edge: TieEdge, name: string, panel: PanelSurvey, mm: ReadMm): readonly Reading[] {
  // With no tie beside the edge, this is the length of the panel.
  const nearest = tiesAtEdge(panel, edge, -1).measured;
  const { measured: gap, serving } = tiesAtEdge(panel, edge, nearest + ONE_LINE);
  return [
    mm(`${serving.length > 0 ? 'Nearest tie to' : 'No tie so far from'}${name}`, nearest),
    ...(serving.length > 0 ? [mm(`Widest gap up${name}`, gap)] : []),
  ];
}

function studOf(x: Mm, { panel }: PanelSurvey): Mm {
  return panel.studs.reduce(
    (nearest, stud) => (Math.abs(stud - x) < Math.abs(nearest - x) ? stud : nearest),
    panel.studs[0] ?? x,
  );
}

function next(what: string, distances: readonly Mm[], mm: ReadMm): readonly Reading[] {
  const ahead = distances.filter((distance) => distance > 0);
  return ahead.length === 0 ? [] : [mm(what, Math.min(...ahead))];
}
