import type { FaceBox } from '../geometry/box';
import { type At, boundAt } from '../limits/bound';
import type { LimitId, RuleSetId } from '../limits/limit';
import { limitOf } from '../limits/limits';
import type { Mm } from '../units';
import { type Opening, type Panel, type Support, TALL_COURSES, type Unit, type Wall } from '../wall/model';
import { unitId } from '../wall/part-id';
import { type Placed, surveyOf } from '../wall/survey';
import type { Chance } from './chance';

/** What a spoiling step works on: the wall so far, how bad to make it, and the places already spoiled. */
export interface SpoilInput {
  readonly wall: Wall;
  readonly rules: RuleSetId;
  /** Deviation ÷ tolerance: over 1 for a fault, under 1 for what is tolerated. */
  readonly severity: number;
  readonly chance: Chance;
  readonly taken: readonly Spot[];
}

/** A box on the face kept clear of other departures. */
export interface Spot extends FaceBox {
  /** A departure of a whole panel: of its face (lean, belly) or of its bond (levels, beds, head joints). What is not of the same kind may stand on it. */
  readonly wide?: 'face' | 'bond';
  /** A departure of a few units that a panel-wide one of the bond would move, or be moved by. */
  readonly ofBond?: boolean;
}

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

/**
 * How far a value departs at a severity: as many times its tolerance, and past it or short of it by at least what its instrument can tell (`clear`),
 * so that nobody has to guess.
 */
export function departureAt(tolerance: number, severity: number, clear: number): number {
  return severity > 1
    ? Math.max(tolerance * severity, tolerance + clear)
    : Math.min(tolerance * severity, tolerance - clear);
}

/** The same of a value with a least bound. */
export function valueAt(least: number, severity: number, clear: number): number {
  return severity > 1 ? Math.min(least / severity, least - clear) : Math.max(least / severity, least + clear);
}

/** One of these panels on which nothing stands that a departure of the whole of it would move. @throws NoRoom when the one drawn has such. */
export function pickPanel(
  { wall, chance, taken }: SpoilInput,
  wide: 'face' | 'bond',
  fits: (panel: Panel) => boolean = () => true,
): Panel {
  const fitting = wall.panels.filter(fits);
  if (fitting.length === 0) throw new NoRoom('no panel fits');
  const panel = chance.pick(fitting);
  if (!isClear(spotOfPanel(panel, wide), taken)) throw new NoRoom('another departure is on the panel');
  return panel;
}

/** Faults keep this far apart, so that one does not move the measure of another. */
const APART: Mm = 350;

export function isClear(spot: Spot, taken: readonly Spot[]): boolean {
  return taken.every(
    (other) =>
      other.panel !== spot.panel ||
      ((spot.wide !== undefined || other.wide !== undefined) && kindOf(spot) !== kindOf(other)) ||
      other.x > spot.x + spot.width + APART ||
      spot.x > other.x + other.width + APART ||
      other.y > spot.y + spot.height + APART ||
      spot.y > other.y + other.height + APART,
  );
}

function kindOf({ wide, ofBond }: Spot): 'face' | 'bond' | undefined {
  return wide ?? (ofBond ? 'bond' : undefined);
}

export function spotOf(units: readonly Unit[], ofBond = false): Spot {
  const x = Math.min(...units.map((unit) => unit.x));
  const y = Math.min(...units.map((unit) => unit.y));
  return {
    panel: units[0]?.panel ?? '',
    x,
    y,
    width: Math.max(...units.map((unit) => unit.x + unit.length)) - x,
    height: Math.max(...units.map((unit) => unit.y + unit.height)) - y,
    ofBond,
  };
}

export function spotOfPanel(panel: Panel, wide: 'face' | 'bond'): Spot {
  return { panel: panel.id, x: 0, y: 0, width: panel.length, height: 100_000, wide };
}

/** Draws of a unit before it is taken that none fits. */
const MOST_TRIES = 60;

/** A whole unit anywhere, not drawn proud and clear of other departures; of those `wanted`. `ofBond` as for its spot. */
export function pickUnit(
  { wall, chance, taken }: SpoilInput,
  ofBond: boolean,
  wanted: (unit: Unit) => boolean = () => true,
): Unit {
  const drawn = new Set(wall.projections.flatMap(({ units }) => units));
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const unit = chance.pick(wall.units);
    const fits =
      unit.kind === 'stretcher' &&
      isClear(spotOf([unit], ofBond), taken) &&
      wanted(unit) &&
      besideMortarOnly(wall, unit) &&
      !drawnNear(wall, drawn, unit);
    if (fits) return unit;
  }
  throw new NoRoom('no unit left');
}

/** Whether a whole unit stands at each side of one, so that the joint between two is of the bond. */
export function isAmongWhole(wall: Wall): (unit: Unit, right?: number) => boolean {
  const whole = new Set(wall.units.filter(({ kind }) => kind === 'stretcher').map(({ id }) => id));
  return ({ panel, course, position }, right = 1) =>
    [-1, ...Array.from({ length: right }, (_, away) => away + 1)].every((away) =>
      whole.has(unitId(panel, course, position + away)),
    );
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
  // One on a support would hang over it by as much more.
  const carried = (unit: Unit) => !wall.supports.some((support) => restsOn(unit, support, wall.gauge));
  return fit.length > 0 && chance.happens(SOLDIER_PERCENT)
    ? chance.pick(fit)
    : pickUnit(input, false, carried);
}

/** Whether the face of a unit counts for the overhang of a support: in the first course of a ledge, in the course on a lintel. */
export function restsOn(unit: Unit, { kind, panel, fromX, toX, y }: Support, gauge: Mm): boolean {
  return (
    unit.panel === panel &&
    unit.x < toX &&
    unit.x + unit.length > fromX &&
    (kind === 'ledge' ? unit.course === 1 : unit.y > y && unit.y - y < gauge / 2)
  );
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

/** Courses up and down within which a unit's neighbours stand, tall ones too. */
const NEAR_COURSES = 3;

/** A unit with what lies beside, below and above it, and its bed. @throws NoRoom when it is not on the wall. */
export function amongNeighbours(wall: Wall, unit: Unit): Placed {
  const units = wall.units.filter(
    ({ panel, course }) => panel === unit.panel && Math.abs(course - unit.course) <= NEAR_COURSES,
  );
  const panels = wall.panels.filter(({ id }) => id === unit.panel);
  const [survey] = surveyOf({ ...wall, panels, units, openings: [], ties: [], projections: [] }).panels;
  const placed = survey?.courses[unit.course - 1]?.find((each) => each.unit.id === unit.id);
  if (placed === undefined) throw new NoRoom(`no unit ${unit.id}`);
  return placed;
}
