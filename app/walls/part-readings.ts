import type { Reading } from '../../components/practice/part-facts';
import type { Part } from '../../lib/wall/parts';
import type { PanelSurvey, Placed, Survey } from '../../lib/wall/survey';
import { headWidth } from '../../lib/wall/survey';
import { openingReadings, supportReadings, tieReadings } from './fixing-readings';

/** What a tape, a gauge and a level read at a part: plain figures, the judgement stays with the reader. `lifted`: its back can be seen. */
export function readingsOf(part: Part, survey: Survey, lifted: boolean): readonly Reading[] {
  const panel = survey.panels.find((each) => each.panel.id === part.panel);
  if (!panel) return [];
  switch (part.kind) {
    case 'unit':
      return unitReadings(
        panel.placed.find(({ unit }) => unit.id === part.id),
        lifted,
      );
    case 'bed':
      return bedReadings(panel.placed.find(({ unit }) => `${unit.id}-bed` === part.id));
    case 'head':
      return headReadings(part, panel, survey);
    case 'course':
      return courseReadings(panel.courses[(part.course ?? 0) - 1] ?? []);
    case 'panel':
      return panelReadings(panel);
    case 'tie':
      return tieReadings(part.id, panel);
    case 'support':
      return supportReadings(part.id, survey);
    case 'opening':
      return openingReadings(part.id, panel);
    case 'corner':
      return cornerReadings(part, survey);
    case 'edge':
      return edgeReadings(part, panel);
    case 'batch':
      return [];
    default: {
      const unknown: never = part.kind;
      return unknown;
    }
  }
}

function unitReadings(placed: Placed | undefined, lifted: boolean): readonly Reading[] {
  if (!placed) return [];
  const { unit, left, right, back } = placed;
  const { twist } = unit;
  return [
    { label: 'Length', mm: unit.length },
    { label: 'Height', mm: unit.height },
    ...(left ? [{ label: 'Left joint', mm: headWidth(left.unit, unit) }] : []),
    ...(right ? [{ label: 'Right joint', mm: headWidth(unit, right.unit) }] : []),
    ...bedReadings(placed),
    { label: unit.set < 0 ? 'Back from line' : 'Out from line', mm: Math.abs(unit.set) },
    {
      label: twist < 0 ? 'Left end proud' : 'Right end proud',
      mm: Math.abs(twist),
    },
    ...(lifted && back
      ? [{ label: 'Back covered', text: `${Math.round((back.covered / back.area) * 100)} %` }]
      : []),
  ];
}

function bedReadings(placed: Placed | undefined): readonly Reading[] {
  if (!placed?.bed) return [];
  return [
    { label: 'Bed, left end', mm: placed.bed.left },
    { label: 'Bed, right end', mm: placed.bed.right },
  ];
}

function headReadings(part: Part, panel: PanelSurvey, { wall }: Survey): readonly Reading[] {
  const left = panel.placed.find(({ unit }) => part.id.startsWith(`${unit.id}/`));
  if (!left?.right) return [];
  const filled = wall.heads.find(({ joint }) => joint === part.id)?.filled ?? 100;
  return [
    { label: 'Width', mm: headWidth(left.unit, left.right.unit) },
    { label: 'Filled with mortar', text: `${Math.round(filled)} %` },
  ];
}

function courseReadings(course: readonly Placed[]): readonly Reading[] {
  const first = course[0]?.unit;
  const last = course.at(-1)?.unit;
  if (!first || !last) return [];
  const drop = first.y - (last.y - last.fall);
  return [
    { label: 'Length', mm: last.x + last.length - first.x },
    {
      label: drop < 0 ? 'Right end higher by' : 'Right end lower by',
      mm: Math.abs(drop),
    },
  ];
}

function panelReadings({ panel, courses, placed }: PanelSurvey): readonly Reading[] {
  const first = courses[0] ?? [];
  const top = courses.at(-1) ?? [];
  const rises = courses.length - 1;
  const lean = mean(top.map(({ unit }) => unit.set)) - mean(first.map(({ unit }) => unit.set));
  const faces = placed.map(({ unit }) => unit.set);
  return [
    { label: 'Length', mm: panel.length },
    { label: 'Courses', text: String(panel.courses) },
    {
      label: 'Four courses, mean',
      mm: ((levelOf(top) - levelOf(first)) / Math.max(1, rises)) * 4,
    },
    { label: lean < 0 ? 'Top leans back by' : 'Top leans out by', mm: Math.abs(lean) },
    { label: 'Farthest out', mm: Math.max(...faces) },
    { label: 'Farthest back', mm: Math.max(0, -Math.min(...faces)) },
    { label: 'Joints lie back', mm: panel.profile === 'raked' ? panel.recess : 0 },
  ];
}

/** A stick to the foot of the return, laid square from the main face, over one metre. */
function cornerReadings(part: Part, { wall }: Survey): readonly Reading[] {
  const at = wall.panels.findIndex(({ id }) => id === part.panel);
  const main = wall.panels[at - 1]?.plan;
  const back = wall.panels[at]?.plan;
  if (!main || !back) return [];
  const [ax, az] = [main.rightX - main.leftX, main.rightZ - main.leftZ];
  const [bx, bz] = [back.rightX - back.leftX, back.rightZ - back.leftZ];
  const cosine = (ax * bx + az * bz) / Math.sqrt((ax * ax + az * az) * (bx * bx + bz * bz));
  return [{ label: 'Return off square in 1 m', mm: Math.abs(cosine) * 1000 }];
}

function edgeReadings(part: Part, { panel, ties }: PanelSurvey): readonly Reading[] {
  if (ties.length === 0) return [];
  const away = ties.map(({ x }) => (part.id.endsWith('left-end') ? x : panel.length - x));
  return [{ label: 'Nearest tie', mm: Math.min(...away) }];
}

function levelOf(course: readonly Placed[]): number {
  return mean(course.map(({ unit }) => unit.y - unit.fall / 2));
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}
