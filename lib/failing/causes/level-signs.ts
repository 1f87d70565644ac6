import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import { parsePartId } from '../../wall/part-id';
import type { PanelSurvey } from '../../wall/survey';
import type { Crack } from '../state/cracks';
import { type FailingWall, STILL, type WallState } from '../state/model';

/**
 * What is measured of beds that have opened and of the face as a plane.
 * - A bed of a panel is open when the steps of its level cracks, or beds of any crack, are together half as long as the panel or longer. It is the bed over
 *   the course under it.
 * - Out of plane: of each course, the mean w of its units. The lean is that of the top course less that of the lowest. The belly is how far the
 *   unit that stands out most stands out beyond the straight line from the lowest course to the top one, by courses. The bow is how far the unit
 *   nearest the middle of the top course stands out beyond the mean of that course's two end units.
 */
export interface LevelSigns {
  /** Beds that are open, that lie on a course with ties, and all beds between courses. */
  readonly openBeds: number;
  readonly openAtTies: number;
  readonly tieCourses: number;
  readonly beds: number;
  readonly belly: Mm;
  readonly lean: Mm;
  readonly bow: Mm;
  /** A level crack over the bearings of a lintel, and how wide it is at its end, mm. */
  readonly openOverBearing: Mm;
  /** A level crack where the face stands out most. */
  readonly openAtBelly: Mm;
}

export function levelSignsOf({ survey, state }: FailingWall, cracks: readonly Crack[]): LevelSigns {
  const beds = survey.panels.map((panel) => openBedsOf(panel, cracks));
  const open = beds.flatMap((each) => each.open);
  const planes = survey.panels.map((panel) => planeOf(panel, state));
  const most = planes.reduce((best, each) => (each.belly > best.belly ? each : best), {
    belly: 0,
    lean: 0,
    y: 0,
    x: 0,
    panel: '',
  });
  const steps = cracks.flatMap(({ steps: all }) => all.filter(({ kind }) => kind === 'bed'));
  return {
    openBeds: open.length,
    openAtTies: beds.reduce((sum, each) => sum + each.atTies, 0),
    tieCourses: survey.panels.reduce(
      (sum, { ties }) => Math.max(sum, new Set(ties.map(({ course }) => course)).size),
      0,
    ),
    beds: Math.max(...survey.panels.map(({ panel }) => panel.courses - 1)),
    belly: most.belly,
    lean: planes.reduce((best, { lean }) => (Math.abs(lean) > Math.abs(best) ? lean : best), 0),
    bow: Math.max(...survey.panels.map((panel) => bowOf(panel, state))),
    openOverBearing: overBearing(survey.panels, steps, survey.wall.gauge),
    openAtBelly: steps.reduce(
      (widest, { panel, from, to, v }) =>
        panel === most.panel &&
        Math.abs(from[1] - most.y) < 2 * survey.wall.gauge &&
        from[0] - 2 * survey.wall.gauge < most.x &&
        most.x < to[0] + 2 * survey.wall.gauge
          ? Math.max(widest, v)
          : widest,
      0,
    ),
  };
}

function openBedsOf({ panel, ties }: PanelSurvey, cracks: readonly Crack[]) {
  const lengths = new Map<number, Mm>();
  for (const crack of cracks) {
    if (crack.panel !== panel.id) continue;
    for (const { kind, part, from, to } of crack.steps) {
      const name = kind === 'bed' ? parsePartId(part) : null;
      if (name?.kind !== 'bed') continue;
      lengths.set(name.course - 1, (lengths.get(name.course - 1) ?? 0) + to[0] - from[0]);
    }
  }
  const open = [...lengths].filter(([course, length]) => course > 0 && length >= panel.length / 2);
  const rows = new Set(ties.map(({ course }) => course));
  return { open, atTies: open.filter(([course]) => rows.has(course)).length };
}

function planeOf({ courses, panel }: PanelSurvey, state: WallState) {
  const out = (index: number) => {
    const units = courses[index] ?? [];
    return (
      units.reduce((sum, { unit }) => sum + (state.moves.get(unit.id) ?? STILL).w, 0) /
      Math.max(1, units.length)
    );
  };
  const last = courses.length - 1;
  const [foot, head] = [out(0), out(last)];
  let belly = 0;
  let at = { x: 0, y: 0 };
  for (const [index, course] of courses.entries()) {
    const plane = last === 0 ? foot : foot + ((head - foot) * index) / last;
    for (const { unit } of course) {
      const stands = (state.moves.get(unit.id) ?? STILL).w - plane;
      if (stands > belly) {
        belly = stands;
        at = { x: unit.x + unit.length / 2, y: unit.y };
      }
    }
  }
  return { belly, lean: head - foot, ...at, panel: panel.id as string };
}

function bowOf({ courses, panel }: PanelSurvey, state: WallState): Mm {
  const units = (courses[courses.length - 1] ?? []).map(({ unit }) => unit);
  const [first, last] = [units[0], units[units.length - 1]];
  if (first === undefined || last === undefined) return 0;
  const off = (unit: Unit) => Math.abs(unit.x + unit.length / 2 - panel.length / 2);
  const middle = units.reduce((best, unit) => (off(unit) < off(best) ? unit : best), first);
  const out = (unit: Unit) => (state.moves.get(unit.id) ?? STILL).w;
  return out(middle) - (out(first) + out(last)) / 2;
}

function overBearing(
  panels: readonly PanelSurvey[],
  steps: readonly {
    readonly panel: string;
    readonly from: readonly [Mm, Mm];
    readonly to: readonly [Mm, Mm];
    readonly v: Mm;
  }[],
  gauge: Mm,
): Mm {
  let widest = 0;
  for (const { supports, panel } of panels) {
    for (const { kind, fromX, toX, y } of supports) {
      if (kind !== 'lintel') continue;
      for (const { panel: on, from, to, v } of steps) {
        if (on !== panel.id || Math.abs(from[1] - y) > gauge) continue;
        if (to[0] <= fromX + 2 * gauge || from[0] >= toX - 2 * gauge) widest = Math.max(widest, v);
      }
    }
  }
  return widest;
}
