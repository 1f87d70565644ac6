import { cut, SHEATHING, STUD_DEEP } from '../../drawing/cut';
import { ring } from '../../drawing/rings';
import { scaleBar } from '../../drawing/scale-bar';
import { type Drawing, lines, type Pieces, rect, type Shape, type Spot } from '../../drawing/shape';
import { rectRing } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import { heightAt } from '../../wall/cut';
import type { Opening, Wall } from '../../wall/model';
import { bedId } from '../../wall/part-id';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { topOf } from '../course-rows';
import { faceDepth } from '../unit-outline';
import { type View, ViewError } from '../view';
import { cutFoundation } from './base';
import { cutBed, cutSupport, cutUnit, unitsCut } from './cut-parts';
import { cutFlashing } from './flashing';
import { cutWall, depthDimensions, halfStud, length, NOTES, SHEET_LEFT } from './sheet';
import { LEDGE_DEEP } from './spots';

/** Room under the cut for two lines of text on a phone, and beside it for notes, mm. */
const BELOW: Mm = 220;
const RIGHT: Mm = 1150;
const SILL_HIGH: Mm = 48;

/** The whole height of a wall cut at x, seen from its right side: the face out to the right, against a plumb line. */
export function sideView(
  { wall, panels }: SurveyedWall,
  { panel: id, x }: Extract<View, { kind: 'side-section' }>,
  system: LengthSystem,
): Drawing {
  const survey = panels.find(({ panel }) => panel.id === id);
  if (survey === undefined) throw new ViewError(`side: no wall "${id}"`);
  const high = topAt(survey, x) + 6;
  const opening = survey.openings.find((each) => x > each.x && x < each.x + each.width) ?? null;
  const body =
    wall.masonry === 'adhered'
      ? stuck(wall, survey, x, high)
      : standing(wall, survey, opening, x, high, system);
  const depth = depthDimensions(wall, high, system);
  const low = -LEDGE_DEEP - BELOW;
  const bar = scaleBar(NOTES, -LEDGE_DEEP + 20, 200, 12, system);
  return {
    box: {
      x: SHEET_LEFT,
      y: low,
      width: RIGHT - SHEET_LEFT,
      height: high + 150 - low,
    },
    shapes: [
      ...body.shapes,
      lines([ring(0, 0, 0, high + 20)], { paint: '--chalk', width: 1.4, thin: true, dash: [8, 4] }),
      ...depth.shapes,
      ...bar.shapes,
    ],
    labels: [
      ...body.labels,
      ...depth.labels,
      bar.label,
      {
        at: [SHEET_LEFT + 30, low + 135],
        text: `Wall ${id}, cut ${length(Math.round(x), system)} from its left end.`,
        anchor: 'start',
        strong: true,
        ofLook: true,
      },
      {
        at: [SHEET_LEFT + 30, low + 50],
        text: 'Dashed: a plumb line at the face line.',
        anchor: 'start',
        ofLook: true,
      },
    ],
    frames: [],
    spots: spotsOf(survey, opening, x),
  };
}

/** How high the wall goes at the cut: a gable is lower towards its eaves. */
function topAt(survey: PanelSurvey, x: Mm): Mm {
  if (survey.panel.gable === null) return topOf(survey);
  return Math.max(...unitsCut(survey, x).map(({ unit }) => unit.y + heightAt(unit, x)));
}

/** A veneer that stands on its ledge or lintel, with ties; an opening at the cut leaves its gap. */
function standing(
  wall: Wall,
  survey: PanelSurvey,
  opening: Opening | null,
  x: Mm,
  high: Mm,
  system: LengthSystem,
): Pieces {
  const here = survey.supports.filter(({ fromX, toX }) => fromX <= x && x <= toX);
  const ledge = here.find(({ kind }) => kind === 'ledge');
  const lintels = here.filter(({ kind }) => kind === 'lintel');
  const stretches =
    opening === null
      ? [[0, high] as const]
      : [[0, opening.y] as const, [opening.y + opening.height, high] as const];
  const flashings = here.map((support) => ({ support, ...cutFlashing(wall, survey, support, x, system) }));
  const bodies = stretches
    .filter(([from, to]) => to > from)
    .map(([from, to]) => {
      const on = flashings.filter(({ support }) => support.y >= from && support.y < to);
      const notes = on.flatMap((each) => each.notes);
      return cutWall(wall, survey, x, from, to, system, notes);
    });
  return {
    shapes: [
      ...(ledge ? cutFoundation(ledge) : []),
      ...(opening === null ? [] : frameIn(wall, opening)),
      ...bodies.flatMap(({ shapes }) => shapes),
      ...lintels.flatMap((lintel) => cutSupport(lintel, 0)),
      ...flashings.flatMap(({ shapes }) => shapes),
    ],
    labels: bodies.flatMap(({ labels }) => labels),
  };
}

/** Units stuck to a backing. The mortar behind them is not shown here: one lifts a unit to see it. */
function stuck(wall: Wall, survey: PanelSurvey, x: Mm, high: Mm): Pieces {
  const deep = SHEATHING + STUD_DEEP;
  const units = unitsCut(survey, x);
  return {
    shapes: [
      cut(rectRing(-wall.family.depth - deep, 0, deep, high), 'url:concrete'),
      ...units.flatMap((placed) => cutBed(survey, placed, x)),
      ...units.map(({ unit }) => cutUnit(wall, unit, x)),
    ],
    labels: [{ at: [NOTES, high / 2], text: 'mortar behind: lift a unit', anchor: 'start', ofLook: true }],
  };
}

/** Sill, pane and frame of an opening that the cut goes through. */
function frameIn(wall: Wall, { y, height, kind }: Opening): readonly Shape[] {
  const back = -wall.family.depth - wall.cavity - SHEATHING;
  const head = y + height;
  const pane = back + 26;
  const part = (low: Mm): Shape => cut(rectRing(back - 10, low, 78, 66), 'url:cut-wood');
  return [
    rect(
      { x: pane, y: y + SILL_HIGH, width: 22, height: height - SILL_HIGH },
      kind === 'window' ? '#9db6c4' : '#5d7268',
      0.7,
    ),
    {
      kind: 'area',
      rings: [ring(back + 40, y, 24, y, 24, y + SILL_HIGH - 10, back + 40, y + SILL_HIGH + 8)],
      fill: '#c9c2b4',
      pen: { paint: '#22272b', width: 1.2 },
    },
    part(y + SILL_HIGH),
    part(head - 66),
  ];
}

function spotsOf(survey: PanelSurvey, opening: Opening | null, x: Mm): readonly Spot[] {
  const spots: Spot[] = [];
  for (const { unit, bed } of unitsCut(survey, x)) {
    const along = Math.min(1, Math.max(0, (x - unit.x) / unit.length));
    const z = faceDepth(unit, along, 0.5);
    const low = unit.y - unit.fall * along;
    spots.push({ part: unit.id, x: z - unit.depth, y: low, width: unit.depth, height: heightAt(unit, x) });
    if (bed !== null) {
      const thick = bed.left + (bed.right - bed.left) * along;
      spots.push({
        part: bedId(unit.id),
        x: z - unit.depth,
        y: low - thick,
        width: unit.depth,
        height: thick,
      });
    }
  }
  const half = halfStud(survey.panel.studs);
  for (const { id, x: at, y, embedment } of survey.ties) {
    if (Math.abs(at - x) <= half)
      spots.push({ part: id, x: -150, y: y - 12, width: 60 + embedment, height: 24 });
  }
  for (const { id, kind, fromX, toX, y, back, front } of survey.supports) {
    if (fromX > x || toX < x) continue;
    const deep = kind === 'ledge' ? LEDGE_DEEP : 20;
    spots.push({ part: id, x: back, y: y - deep, width: front - back, height: deep });
  }
  if (opening !== null)
    spots.push({ part: opening.id, x: -180, y: opening.y, width: 180, height: opening.height });
  return spots;
}
