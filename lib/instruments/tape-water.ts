import { isOver, pastEdge, supportsUnder, tellsDrainage, weepGapsOf } from '../wall/drainage';
import type { Support } from '../wall/model';
import type { PanelSurvey, Survey } from '../wall/survey';
import { notNegative, type ReadMm } from './read-off';
import type { Reading } from './reading';

/** Past a head joint in a course on a flashing: from the weep on its left, or the end there, to the one on its right. Of a weep, both ways. */
export function weepReadings(
  head: string,
  panel: PanelSurvey,
  survey: Survey,
  mm: ReadMm,
): readonly Reading[] {
  const { wall } = survey;
  if (!tellsDrainage(wall)) return [];
  const here = panel.placed.find(({ unit }) => head.startsWith(`${unit.id}/`));
  const middle = here?.right ? (here.unit.x + here.unit.length + here.right.unit.x) / 2 : null;
  if (middle === null) return [];
  const gaps = wall.flashings
    .filter((flashing) => flashing.panel === panel.panel.id)
    .flatMap((flashing) => weepGapsOf(survey, panel, flashing))
    .filter(({ units }) => units.some(({ unit }) => unit.id === here?.unit.id));
  return gaps.flatMap(({ from, to }) => {
    if (middle > from && middle < to) return [mm('From weep to weep, past this joint', to - from)];
    if (middle === from) return [mm('To the next weep, right', to - from)];
    return middle === to ? [mm('To the next weep, left', to - from)] : [];
  });
}

/** Of the flashing on a support: how far it goes up and out, and its ends where they lie within the panel. */
export function flashingReadings(
  support: Support,
  panel: PanelSurvey,
  { wall }: Survey,
  mm: ReadMm,
): readonly Reading[] {
  return wall.flashings.flatMap((flashing) => {
    const { shape, fromX, toX } = flashing;
    if (shape === undefined || !isOver(flashing, support, wall.gauge)) return [];
    return [
      mm('Flashing up the backing', shape.up),
      notNegative(
        mm('Flashing past the edge under it', pastEdge(shape, supportsUnder(wall, panel, flashing))),
      ),
      ...(fromX > 0 ? [notNegative(mm('End dam on the left', shape.leftDam))] : []),
      ...(toX < panel.panel.length ? [notNegative(mm('End dam on the right', shape.rightDam))] : []),
    ];
  });
}
