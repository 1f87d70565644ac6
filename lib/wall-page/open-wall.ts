import type { Wall } from '../wall/model';
import { namesOf } from '../wall/part-names';
import { type SurveyedWall, surveyedWall } from '../wall/surveyed';

/** A wall with what the pages ask of it worked out once. */
export interface OpenWall extends SurveyedWall {
  /** A unit near the middle: the one lifted until another is picked. */
  readonly firstUnit: string;
  readonly nameOf: (part: string) => string;
  /** The unit `by` places on, round from the last to the first. */
  readonly unitFrom: (unit: string, by: number) => string;
  /** The unit nearest above (`by` 1) or below (-1) it; itself where there is no such course. */
  readonly courseFrom: (unit: string, by: number) => string;
}

export function openWallOf(wall: Wall): OpenWall {
  const surveyed = surveyedWall(wall);
  const { units } = wall;
  return {
    ...surveyed,
    firstUnit: middleUnit(wall),
    nameOf: namesOf(surveyed),
    unitFrom: (unit, by) => {
      const at = units.findIndex(({ id }) => id === unit);
      return units[(at + by + units.length) % units.length]?.id ?? unit;
    },
    courseFrom: (id, by) => {
      const from = units.find((each) => each.id === id);
      if (!from) return id;
      const next = units.filter((each) => each.panel === from.panel && each.course === from.course + by);
      return nearestTo(next, from.x + from.length / 2) ?? id;
    },
  };
}

function middleUnit({ panels, units }: Wall): string {
  const panel = panels[0];
  if (!panel) return '';
  const course = units.filter(
    (each) => each.panel === panel.id && each.course === Math.ceil(panel.courses / 2),
  );
  return nearestTo(course, panel.length / 2) ?? units[0]?.id ?? '';
}

/** The unit whose middle is nearest to `x`, mm. */
function nearestTo(units: Wall['units'], x: number): string | undefined {
  const away = (unit: Wall['units'][number]) => Math.abs(unit.x + unit.length / 2 - x);
  return [...units].sort((a, b) => away(a) - away(b))[0]?.id;
}

/**
 * One unit in so many may be lifted off a wall whose units are stuck on. Sparing, and yet fair: with so many spread evenly over every
 * fourth course at least 95 % of the patches without mortar are met (tests/lib/wall-page/openings-up.test.ts).
 */
const UNITS_AN_OPENING = 14;
/** Walls on ties show their ties before cover: a unit is lifted to look at a strap, not to search. */
const ON_TIES = 6;

/** How many units of a wall may be lifted. */
export function openingsUpOf({ masonry, units }: Wall): number {
  return masonry === 'adhered' ? Math.ceil(units.length / UNITS_AN_OPENING) : ON_TIES;
}
