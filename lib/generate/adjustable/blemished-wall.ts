import type { Condition, Wall } from '../../wall/model';

/** One whole unit in so many shows the blemish, strewn over the wall. */
const ONE_IN = 17;

/** The wall with a blemish put on a few whole units of its main panel, always the same ones. Nothing measured changes. */
export function withBlemish(wall: Wall, condition: Condition): Wall {
  if (condition === 'sound') return wall;
  const whole = wall.units.filter(({ panel, kind }) => panel === 'A' && kind === 'stretcher');
  const marked = new Set(
    whole.filter(({ course }, at) => (at * 7 + course * course) % ONE_IN === 0).map(({ id }) => id),
  );
  return { ...wall, units: wall.units.map((unit) => (marked.has(unit.id) ? { ...unit, condition } : unit)) };
}
