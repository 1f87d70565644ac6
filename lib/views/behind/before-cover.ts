import { TEXT_SHARE } from '../../drawing/label-nodes';
import { ring } from '../../drawing/rings';
import { type Drawing, type Frame, type Label, lines, rect, type Shape } from '../../drawing/shape';
import { alongTape, upTape } from '../../drawing/tape';
import type { Box } from '../../geometry/box';
import { type Point, type Ring, rectRing } from '../../geometry/polygon';
import type { LengthSystem, Mm } from '../../units';
import { heightAt } from '../../wall/cut';
import type { Wall } from '../../wall/model';
import type { PartKind } from '../../wall/part-id';
import type { PanelSurvey } from '../../wall/survey';
import type { SurveyedWall } from '../../wall/surveyed';
import { topOf, topsIn } from '../course-rows';
import { faceSpots } from '../face-spots';
import { rakeOf } from '../front/gable';
import { cornerPlan, turnOf } from '../plan/corner';
import { hangingStrap, strapLabel } from './straps';

/** What stands before the veneer goes up. */
const STANDING: ReadonlySet<PartKind> = new Set(['tie', 'opening', 'edge', 'corner', 'panel']);
const BETWEEN: Mm = 520;
const MARGIN: Mm = 300;
/** Holds the numbers of the upright tape, on a phone too. */
const MARGIN_LEFT: Mm = 460;
const ABOVE: Mm = 110;
/** A stud is this wide (nominal two-by), mm. */
const STUD: Mm = 38;

/**
 * Before the veneer goes up: sheathing over studs, openings, and every strap hanging flat from its fixing, as long and as wide as
 * it is. The courses to come are faint lines. A tape lies along the foot and up the left side of each panel.
 */
export function beforeCoverView(surveyed: SurveyedWall, system: LengthSystem): Drawing {
  const { wall, panels: surveys, parts } = surveyed;
  const across = surveys.reduce((sum, { panel }) => sum + panel.length + BETWEEN, 0);
  const text = across * TEXT_SHARE;
  const marginLeft = Math.max(MARGIN_LEFT, 120 + 2 * text);
  const between = Math.max(BETWEEN, 120 + 2 * text);
  const above = surveys.length > 1 ? Math.max(ABOVE, 1.5 * text) : ABOVE;
  const below = Math.max(MARGIN, 122 + 2.9 * text);
  let from = 0;
  const frames: Frame[] = surveys.map(({ panel }) => {
    const frame = { panel: panel.id, x: from, y: 0, scale: 1 };
    from += panel.length + between;
    return frame;
  });
  const end = from - between;
  const top = Math.max(...surveys.map(topOf));
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  for (const [index, survey] of surveys.entries()) {
    const x = frames[index]?.x ?? 0;
    const along = alongTape(x, survey.panel.length, -70, system);
    const up = upTape(x - 70, topOf(survey), system);
    const many = surveys.length > 1;
    shapes.push(...panelShapes(wall, survey, x), studTicks(survey, x), ...along.shapes, ...up.shapes);
    labels.push(
      ...along.labels,
      ...up.labels,
      ...survey.ties.map((tie) => strapLabel(wall, survey, tie, x, system)),
    );
    if (many)
      labels.push({
        at: [x + survey.panel.length / 2, topOf(survey) + above / 2],
        text: `Wall ${survey.panel.id}`,
        anchor: 'middle',
        ofLook: true,
      });
  }
  const narrowest = labels.reduce<Label | null>(
    (least, label) =>
      label.plate && (label.room ?? 0) < (least?.room ?? Number.POSITIVE_INFINITY) ? label : least,
    null,
  );
  if (narrowest !== null) {
    labels.push({
      at: [-marginLeft + 40, -122],
      rise: -2.2,
      text: 'Zoom in to read the straps',
      anchor: 'start',
      standsFor: narrowest,
    });
  }
  const turn = turnOf(wall);
  const plan = turn && cornerPlan(turn, 0, -below - 0.5 * text, system);
  // Four lines of text, or the plan.
  const low = plan ? Math.min(plan.spot.y - 0.5 * text, -below - 6.2 * text) : -below;
  const spots = faceSpots(parts, frames, (kind) => STANDING.has(kind));
  return {
    box: { x: -marginLeft, y: low, width: end + marginLeft + 60, height: top - low + above },
    shapes: [...shapes, ...(plan?.shapes ?? [])],
    labels: [...labels, ...(plan?.labels ?? [])],
    frames,
    // The veneer is still to come: of its units, joints and supports nothing is seen.
    spots: plan ? [...spots.filter(({ part }) => part !== plan.spot.part), plan.spot] : spots,
  };
}

function panelShapes(wall: Wall, survey: PanelSurvey, x: Mm): readonly Shape[] {
  const { panel, openings } = survey;
  const top = topOf(survey);
  const outline = outlineOf(wall, survey, x, top);
  const studs = panel.studs.map(
    (stud): Box => ({ x: x + stud - STUD / 2, y: 0, width: STUD, height: studTop(survey, stud, top) }),
  );
  const levels = topsIn(survey).map((line) => line.map(([px, py]): Point => [px + x, py]));
  return [
    { kind: 'area', rings: [outline], fill: '#cdb48a' },
    { kind: 'area', rings: [outline], fill: 'url:wood', opacity: 0.35 },
    ...studs.map((stud) => rect(stud, '#a97f4b', 0.55)),
    lines(
      studs.flatMap((stud) => [
        ring(stud.x, 0, stud.x, stud.height),
        ring(stud.x + STUD, 0, stud.x + STUD, stud.height),
      ]),
      { paint: '#6d4d27', width: 1, thin: true, dash: [6, 4], opacity: 0.8 },
    ),
    lines(levels, { paint: '#4b5a63', width: 1, thin: true, opacity: 0.38 }),
    { kind: 'area', rings: [outline], pen: { paint: '#3a2c1a', width: 1.5, thin: true } },
    ...openings.flatMap((opening): readonly Shape[] => [
      rect({ ...opening, x: x + opening.x }, '#3b4147'),
      {
        kind: 'area',
        rings: [rectRing(x + opening.x - 19, opening.y - 19, opening.width + 38, opening.height + 38)],
        pen: { paint: '#8a6233', width: 38 },
      },
    ]),
    ...survey.ties.flatMap((tie) => hangingStrap(wall, tie, x)),
  ];
}

/** A dimension line between the foot and the tape, with a tick at the middle of each stud. */
function studTicks({ panel }: PanelSurvey, x: Mm): Shape {
  const level = -36;
  const ticks = panel.studs.flatMap((stud): readonly Ring[] => [
    ring(x + stud, level - 24, x + stud, level + 24),
    ring(x + stud - 14, level - 14, x + stud + 14, level + 14),
  ]);
  return lines([ring(x, level, x + panel.length, level), ...ticks], {
    paint: '--slate',
    width: 1.2,
    thin: true,
  });
}

/** The sheathed area: upright, or with the rake of a gable. */
function outlineOf(wall: Wall, survey: PanelSurvey, x: Mm, top: Mm): Ring {
  const { panel } = survey;
  const rake = rakeOf(wall, survey, top);
  if (rake === null) return rectRing(x, 0, panel.length, top);
  const inward = (top - rake.foot) / rake.slope;
  return [
    [x, 0],
    [x + panel.length, 0],
    [x + panel.length, rake.foot],
    [x + panel.length - inward, top],
    [x + inward, top],
    [x, rake.foot],
  ];
}

function studTop(survey: PanelSurvey, stud: Mm, top: Mm): Mm {
  if (survey.panel.gable === null) return top;
  return survey.placed.reduce(
    (most, { unit }) =>
      stud >= unit.x - 12 && stud <= unit.x + unit.length + 12
        ? Math.max(most, unit.y + heightAt(unit, Math.min(Math.max(stud, unit.x), unit.x + unit.length)))
        : most,
    0,
  );
}
