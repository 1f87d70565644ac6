import { type Margin, marginsOf } from '../failing/margins/margins';
import { turnsOf } from '../failing/margins/next';
import type { FailingWall } from '../failing/state/model';
import type { UnitId } from '../wall/part-id';

/** Below this margin a unit may come down: it hardly holds itself, or a gust or a frost more is all it needs. Ours, of drawings; never of a real wall. */
export const MAY_COME_DOWN = 3;
/** One that lies this far beside what may come down is under it too, mm: nothing falls straight. Ours. */
const BESIDE = 600;

/** How each unit of a failing wall is held. */
export interface Risk {
  readonly margins: readonly Margin[];
  /** Units that may come down. */
  readonly loose: ReadonlySet<UnitId>;
  /** Who comes next: all of the first turn where it may come down, and nobody where all is held. */
  readonly next: readonly UnitId[];
  /** Units that nobody touches: they may come down, or what is above them may. */
  readonly untouchable: ReadonlySet<UnitId>;
}

export function riskOf(failing: FailingWall): Risk {
  const margins = marginsOf(failing);
  const loose = new Set(margins.filter(({ margin }) => margin < MAY_COME_DOWN).map(({ part }) => part));
  const [first] = turnsOf(failing, margins);
  const units = failing.survey.wall.units;
  const hanging = units.filter(({ id }) => loose.has(id));
  const under = units.filter((unit) =>
    hanging.some(
      (above) =>
        above.panel === unit.panel &&
        above.y + above.height > unit.y &&
        above.x - BESIDE < unit.x + unit.length &&
        above.x + above.length + BESIDE > unit.x,
    ),
  );
  return {
    margins,
    loose,
    next: first !== undefined && first.margin < MAY_COME_DOWN ? first.parts : [],
    untouchable: new Set([...loose, ...under.map(({ id }) => id)]),
  };
}
