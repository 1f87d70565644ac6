import type { Mm } from '../../units';
import type { Unit } from '../../wall/model';
import type { OpeningId } from '../../wall/part-id';
import type { PanelSurvey } from '../../wall/survey';
import { type Crack, cracksOf } from '../state/cracks';
import { type FailingWall, STILL, type WallState } from '../state/model';
import { type FaceSigns, faceSignsOf } from './face-signs';
import { type LevelSigns, levelSignsOf } from './level-signs';

/**
 * What is measured of a wall's movement before any cause is named.
 * - A crack stands over an opening when the lintel of that has moved, its foot is between half a course below the head of the opening and three and a half above, it reaches past
 *   neither corner by two courses, and its beds stand open, in the mean, more than twice as wide as its heads.
 * - A tear of a panel: its cracks that are neither level nor over an opening, when they are three courses high or more together. Its widths at foot and
 *   head are those of one straight line, by least squares, through the openings of all its steps that are upright, at their middles; its rise
 *   is the mean opening of its beds, its run that of its heads and cut units.
 * - Ends and middle of a panel: the mean v of the first and last unit of its lowest course, and of the one nearest its middle.
 */
export interface Signs extends FaceSigns, LevelSigns {
  readonly state: WallState;
  readonly cracks: readonly Crack[];
  /** The tallest tear of the wall. */
  readonly tear: Tear | null;
  /** How far the left end, middle and right end of the panel of most movement have gone up, mm. */
  readonly ends: Ends;
  /** The lintel that has moved most. */
  readonly lintel: Lintel | null;
  /** A tear within two and a half units' length of a corner, and how far its outer side has stepped out, mm. */
  readonly stepAtCorner: Mm;
}

export interface Tear {
  readonly panel: PanelSurvey;
  readonly atFoot: Mm;
  readonly atHead: Mm;
  readonly run: Mm;
  readonly rise: Mm;
  readonly low: Mm;
  readonly high: Mm;
  readonly left: Mm;
  readonly right: Mm;
}

export interface Ends {
  readonly left: Mm;
  readonly middle: Mm;
  readonly right: Mm;
}

export interface Lintel extends Ends {
  readonly isSteel: boolean;
  /** Cracks that begin at its two ends and stand over its opening. */
  readonly cracksOver: number;
}

export function signsOf(failing: FailingWall): Signs {
  const { survey, state } = failing;
  const cracks = cracksOf(failing);
  const tears = survey.panels.flatMap((panel) => tearOf(panel, cracks, survey.wall.gauge, state) ?? []);
  const tear = tears.reduce<Tear | null>(
    (tallest, each) =>
      tallest === null || each.high - each.low > tallest.high - tallest.low ? each : tallest,
    null,
  );
  return {
    state,
    cracks,
    tear,
    ends: endsOf(survey.panels, state),
    lintel: lintelOf(survey.panels, cracks, state, survey.wall.gauge),
    stepAtCorner: tear === null ? 0 : stepAtCorner(tear, state, survey.wall.family.length),
    ...faceSignsOf(failing),
    ...levelSignsOf(failing, cracks),
  };
}

function tearOf(panel: PanelSurvey, cracks: readonly Crack[], gauge: Mm, state: WallState): Tear | null {
  const own = cracks.filter(
    (crack) =>
      crack.panel === panel.panel.id &&
      crack.way !== 'horizontal' &&
      !isOverOpening(panel, crack, gauge, state),
  );
  if (own.length === 0) return null;
  const steps = own.flatMap((crack) => crack.steps);
  const upright = steps.filter(({ kind }) => kind !== 'bed');
  const beds = steps.filter(({ kind }) => kind === 'bed');
  const low = Math.min(...own.map((crack) => crack.low));
  const high = Math.max(...own.map((crack) => crack.high));
  if (high - low < 3 * gauge || upright.length < 2) return null;
  const line = lineThrough(upright.map(({ from, to, u }) => [(from[1] + to[1]) / 2, u] as const));
  return {
    panel,
    atFoot: line(low),
    atHead: line(high),
    run: mean(upright.map(({ u }) => u)),
    rise: mean(beds.map(({ v }) => v)),
    low,
    high,
    left: Math.min(...own.map((crack) => crack.left)),
    right: Math.max(...own.map((crack) => crack.right)),
  };
}

/** Beginning at the head of an opening whose lintel has moved, past neither of its corners by more than two courses, and opening upward rather than along. */
function isOverOpening(
  { openings, supports }: PanelSurvey,
  crack: Crack,
  gauge: Mm,
  state: WallState,
): boolean {
  const hasMoved = (opening: OpeningId) =>
    supports.some((each) => each.opening === opening && state.supports.has(each.id));
  return openings.some(
    ({ id, x, y, width, height }) =>
      hasMoved(id) &&
      crack.low > y + height - gauge / 2 &&
      crack.low < y + height + gauge * 3.5 &&
      crack.left > x - 2 * gauge &&
      crack.right < x + width + 2 * gauge &&
      crack.opensUp > 2 * Math.abs(crack.opensAlong),
  );
}

function endsOf(panels: readonly PanelSurvey[], state: WallState): Ends {
  const all = panels.map(({ courses, panel }): Ends => {
    const lowest = courses[0] ?? [];
    const up = (unit: Unit | undefined) => (unit === undefined ? 0 : (state.moves.get(unit.id) ?? STILL).v);
    const units = lowest.map(({ unit }) => unit);
    const off = (unit: Unit) => Math.abs(unit.x + unit.length / 2 - panel.length / 2);
    const middle = units.reduce((best, unit) => (off(unit) < off(best) ? unit : best), units[0] as Unit);
    return { left: up(units[0]), middle: up(middle), right: up(units[units.length - 1]) };
  });
  const most = (ends: Ends) => Math.max(Math.abs(ends.left), Math.abs(ends.middle), Math.abs(ends.right));
  return all.reduce((best, ends) => (most(ends) > most(best) ? ends : best), {
    left: 0,
    middle: 0,
    right: 0,
  });
}

function lintelOf(
  panels: readonly PanelSurvey[],
  cracks: readonly Crack[],
  state: WallState,
  gauge: Mm,
): Lintel | null {
  for (const survey of panels) {
    for (const support of survey.supports) {
      const move = state.supports.get(support.id);
      if (support.kind !== 'lintel' || move === undefined) continue;
      const over = cracks.filter(
        (crack) => crack.panel === survey.panel.id && isOverOpening(survey, crack, gauge, state),
      );
      return { ...move, isSteel: support.material === 'steel', cracksOver: over.length };
    }
  }
  return null;
}

function stepAtCorner({ panel, left, right }: Tear, state: WallState, length: Mm): Mm {
  const { leftEnd, rightEnd, length: long } = panel.panel;
  const atRight = rightEnd === 'corner' && left > long - 2.5 * length;
  const atLeft = leftEnd === 'corner' && right < 2.5 * length;
  if (!atRight && !atLeft) return 0;
  return panel.placed.reduce((most, { unit }) => {
    const beyond = atRight ? unit.x >= left : unit.x + unit.length <= right;
    return beyond ? Math.max(most, (state.moves.get(unit.id) ?? STILL).w) : most;
  }, 0);
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length;
}

function lineThrough(points: readonly (readonly [number, number])[]): (z: number) => number {
  const z0 = mean(points.map(([z]) => z));
  const w0 = mean(points.map(([, w]) => w));
  const zz = points.reduce((sum, [z]) => sum + (z - z0) * (z - z0), 0);
  const slope = zz > 0 ? points.reduce((sum, [z, w]) => sum + (z - z0) * (w - w0), 0) / zz : 0;
  return (z) => w0 + slope * (z - z0);
}
