import type { FaceBox } from '../geometry/box';
import { type At, boundAt } from '../limits/bound';
import type { LimitId, RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import type { Mm } from '../units';
import { type Opening, type Panel, TALL_COURSES, type Unit, type Wall } from '../wall/model';
import { unitId } from '../wall/part-id';
import type { Chance } from './chance';

/** What a spoiling step works on: the wall so far, how bad to make it, and the places already spoiled. */
export interface SpoilInput {
  readonly wall: Wall;
  readonly rules: RuleSetId;
  /** Deviation ÷ tolerance, over 1. */
  readonly severity: number;
  readonly chance: Chance;
  readonly taken: readonly Spot[];
}

/** A box on the face kept clear of other faults. */
export type Spot = FaceBox;

export interface Spoiled {
  readonly wall: Wall;
  readonly taken: Spot;
}

/** The wall has no place (left) for a fault: the planner draws another. */
export class NoRoom extends Error {
  override name = 'NoRoom';
}

/** What the rules allow. @throws NoRoom where they say nothing of it. */
export function boundIn(rules: RuleSetId, id: LimitId, at: At = {}): number {
  const limit = limitOf(rules, id);
  if (limit === undefined) throw new NoRoom(`no limit ${id}`);
  return boundAt(limit, at);
}

/** A panel that no other fault has touched. @throws NoRoom when the one drawn has been. */
export function pickPanel({ wall, chance, taken }: SpoilInput): Panel {
  const panel = chance.pick(wall.panels);
  if (taken.some((spot) => spot.panel === panel.id)) throw new NoRoom('another fault is on the panel');
  return panel;
}

/** Faults keep this far apart, so that one does not move the measure of another. */
const APART: Mm = 350;

export function isClear(spot: Spot, taken: readonly Spot[]): boolean {
  return taken.every(
    (other) =>
      other.panel !== spot.panel ||
      other.x > spot.x + spot.width + APART ||
      spot.x > other.x + other.width + APART ||
      other.y > spot.y + spot.height + APART ||
      spot.y > other.y + other.height + APART,
  );
}

export function spotOf(units: readonly Unit[]): Spot {
  const x = Math.min(...units.map((unit) => unit.x));
  const y = Math.min(...units.map((unit) => unit.y));
  return {
    panel: units[0]?.panel ?? '',
    x,
    y,
    width: Math.max(...units.map((unit) => unit.x + unit.length)) - x,
    height: Math.max(...units.map((unit) => unit.y + unit.height)) - y,
  };
}

export function spotOfPanel(panel: Panel): Spot {
  return { panel: panel.id, x: 0, y: 0, width: panel.length, height: 100_000 };
}

/** A whole unit with a neighbour each side, off the first and top courses, not drawn proud and clear of other faults. */
export function pickUnit(
  { wall, chance, taken }: SpoilInput,
  wanted: (unit: Unit) => boolean = () => true,
): Unit {
  const drawn = new Set(wall.projections.flatMap(({ units }) => units));
  const byPlace = new Set(wall.units.filter(({ kind }) => kind === 'stretcher').map(({ id }) => id));
  const topCourse = new Map(wall.panels.map(({ id, courses }) => [id, courses]));
  const fit = wall.units.filter(
    (unit) =>
      unit.kind === 'stretcher' &&
      unit.course > 2 &&
      unit.course < (topCourse.get(unit.panel) ?? 0) - 1 &&
      byPlace.has(unitId(unit.panel, unit.course, unit.position - 1)) &&
      byPlace.has(unitId(unit.panel, unit.course, unit.position + 1)) &&
      wanted(unit),
  );
  const clear = fit.filter(
    (unit) => isClear(spotOf([unit]), taken) && besideMortarOnly(wall, unit) && !drawnNear(wall, drawn, unit),
  );
  if (clear.length === 0) throw new NoRoom('no unit left');
  return chance.pick(clear);
}

/** In a hundred faces that are spoiled on a wall with soldiers, this many are soldiers. */
const SOLDIER_PERCENT = 25;

/** A unit whose face is to be spoiled: as `pickUnit`, or a soldier among soldiers. */
export function pickFace(input: SpoilInput): Unit {
  const { wall, chance, taken } = input;
  const soldiers = wall.units.filter(({ kind }) => kind === 'soldier');
  const ids = new Set(soldiers.map(({ id }) => id));
  const fit = soldiers.filter(
    (unit) =>
      [-1, 1].every((away) => ids.has(unitId(unit.panel, unit.course, unit.position + away))) &&
      isClear(spotOf([unit]), taken),
  );
  return fit.length > 0 && chance.happens(SOLDIER_PERCENT) ? chance.pick(fit) : pickUnit(input);
}

/** The unit `away` places along the same course. */
export function unitBeside(wall: Wall, unit: Unit, away: number): Unit {
  const id = unitId(unit.panel, unit.course, unit.position + away);
  const found = wall.units.find((each) => each.id === id);
  if (found === undefined) throw new NoRoom(`no unit ${id}`);
  return found;
}

/** No opening, nor soldiers over one, beside or just over the unit within two of its lengths. */
function besideMortarOnly(wall: Wall, unit: Unit): boolean {
  return wall.openings.every(
    (opening) =>
      opening.panel !== unit.panel ||
      opening.x > unit.x + 2 * unit.length ||
      opening.x + opening.width < unit.x - unit.length ||
      opening.y > unit.y + 3 * wall.gauge ||
      topOverOpening(wall, opening) < unit.y - 2 * wall.gauge,
  );
}

/** The head of an opening, or the top of the soldiers over it. */
export function topOverOpening({ units, gauge }: Wall, { panel, x, y, width, height }: Opening): Mm {
  const over = units.some(
    (unit) =>
      unit.kind === 'soldier' && unit.panel === panel && unit.x >= x && unit.x + unit.length <= x + width,
  );
  return y + height + (over ? TALL_COURSES * gauge : 0);
}

function drawnNear(wall: Wall, drawn: ReadonlySet<string>, unit: Unit): boolean {
  if (drawn.size === 0) return false;
  return wall.units.some(
    (each) => drawn.has(each.id) && each.panel === unit.panel && Math.abs(each.course - unit.course) <= 1,
  );
}
