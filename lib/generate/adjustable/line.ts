import { boundAt, slopeVerdict } from '../../limits/bound';
import { MM_PER_M, snap } from '../../units';
import { ROD_COURSES } from '../../wall/courses';
import type { Wall } from '../../wall/model';
import { shiftCourses, withUnits } from '../draft';
import { type Departure, twice, unitNow } from './departure';

const HALF = 0.5;
const EIGHTH = 0.125;

/** Line, level, plumb and gauge. */
export const LINE_DEPARTURES: readonly Departure[] = [
  {
    id: 'lean',
    family: 'Line',
    name: 'Lean of the main wall',
    checks: ['out-of-plumb'],
    unit: 'mm',
    limit: 'plumb',
    fit: (wall, limit) => {
      // The value is the lean over the run that governs, as the check says it.
      const steep = slopeVerdict(limit.bound, 1, heightOf(wall));
      return {
        at: 'A',
        sound: 0,
        most: twice(steep.limit, 0, HALF),
        step: HALF,
        // Inward, so that no overhang grows with it.
        change: (now, value) => {
          const slope = value / steep.measured;
          return {
            ...now,
            units: now.units.map((unit) =>
              unit.panel === 'A'
                ? { ...unit, set: unit.set - snap(slope * (unit.y + unit.height / 2)) }
                : unit,
            ),
          };
        },
      };
    },
  },
  {
    id: 'set',
    family: 'Line',
    name: 'How far one unit stands out',
    checks: ['proud-unit'],
    unit: 'mm',
    limit: 'unit-set',
    fit: (_, limit, { set }) => {
      return {
        at: set.id,
        sound: 0,
        most: twice(boundAt(limit, {}), 0, EIGHTH),
        step: EIGHTH,
        change: (now, value) => {
          const unit = unitNow(now, set);
          return withUnits(now, new Map([[unit.id, { ...unit, set: unit.set + snap(value) }]]));
        },
      };
    },
  },
  {
    id: 'twist',
    family: 'Line',
    name: 'Twist of one unit',
    checks: ['twisted-unit'],
    unit: 'mm',
    limit: 'unit-twist',
    fit: (_, limit, { twist }) => {
      return {
        at: twist.id,
        sound: 0,
        most: twice(boundAt(limit, {}), 0, EIGHTH),
        step: EIGHTH,
        change: (now, value) => {
          const unit = unitNow(now, twist);
          return withUnits(now, new Map([[unit.id, { ...unit, twist: snap(value) }]]));
        },
      };
    },
  },
  {
    id: 'gauge',
    family: 'Line',
    name: 'Gain on the rod, over four courses',
    checks: ['gauge-drift'],
    unit: 'mm per 4 courses',
    limit: 'gauge',
    fit: (wall, limit) => {
      if (wall.openings.length > 0) return null;
      const step = EIGHTH * ROD_COURSES;
      return {
        at: 'A',
        sound: 0,
        most: twice(boundAt(limit, {}), 0, step),
        step,
        change: (now, value) => shiftCourses(now, 'A', (course) => (value / ROD_COURSES) * (course - 1)),
      };
    },
  },
  {
    id: 'corner',
    family: 'Line',
    name: 'Corner off square, in one metre',
    checks: ['corner-not-square'],
    unit: 'mm per m',
    limit: 'corner-square',
    fit: (wall, limit) => {
      const swung = wall.panels.find(({ leftEnd }) => leftEnd === 'corner');
      if (swung === undefined) return null;
      return {
        at: 'A-B-corner',
        sound: 0,
        most: twice(boundAt(limit, {}), 0, HALF),
        step: HALF,
        change: (now, value) => ({
          ...now,
          panels: now.panels.map((panel) => (panel.id === swung.id ? turned(panel, value) : panel)),
        }),
      };
    },
  },
];

/** The far end of the return moved out: by `value` for each metre back, which is the sine of the angle times a metre when the leg is kept. */
function turned(panel: Wall['panels'][number], value: number): Wall['panels'][number] {
  const { leftX, rightZ, leftZ } = panel.plan;
  const back = leftZ - rightZ;
  // tan = sin ÷ sqrt(1 − sin²), for a leg of one metre.
  const sine = value / MM_PER_M;
  return {
    ...panel,
    plan: { ...panel.plan, rightX: leftX + snap((back * sine) / Math.sqrt(1 - sine * sine)) },
  };
}

/** From the lowest underside to the highest top of the main panel. */
function heightOf({ units }: Wall): number {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  for (const { panel, y, height } of units) {
    if (panel !== 'A') continue;
    least = Math.min(least, y);
    most = Math.max(most, y + height);
  }
  return most - least;
}
