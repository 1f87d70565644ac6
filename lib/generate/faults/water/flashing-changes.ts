import { isOver } from '../../../wall/drainage';
import type { Flashing, FlashingShape } from '../../../wall/flashing';
import type { Wall } from '../../../wall/model';
import { NoRoom, type Spoiled, type SpoilInput, type Spot } from '../../spoil-input';

/** What a departure is of: each of a flashing can be spoiled once. Its edge is measured from the support, which must then stay where it is. */
export type Aspect = 'back' | 'edge' | 'ends' | 'weeps';
const ASPECTS: readonly Aspect[] = ['back', 'edge', 'ends', 'weeps'];

/** Its spot is named after it and lies on no panel; that of its edge is the support's. */
export function flashingSpot(wall: Wall, flashing: Flashing, aspect: Aspect): Spot {
  const { panel, fromX, toX } = flashing;
  const support = wall.supports.find((each) => isOver(flashing, each, wall.gauge));
  const name = aspect === 'edge' && support ? support.id : `${panel} flashing ${fromX} ${toX} ${aspect}`;
  return { panel: name, x: 0, y: 0, width: 0, height: 0 };
}

/** A flashing on a support, of which no other departure has touched this, or anything. @throws NoRoom when none is left. */
export function pickFlashing(
  { wall, chance, taken }: SpoilInput,
  aspect: Aspect | 'all',
  fits: (flashing: Flashing) => boolean = () => true,
): Flashing {
  const aspects = aspect === 'all' ? ASPECTS : [aspect];
  const touched = new Set(taken.map(({ panel }) => panel));
  const free = wall.flashings.filter(
    (flashing) =>
      wall.supports.some((support) => isOver(flashing, support, wall.gauge)) &&
      !aspects.some((each) => touched.has(flashingSpot(wall, flashing, each).panel)) &&
      fits(flashing),
  );
  if (free.length === 0) throw new NoRoom('no flashing left');
  return chance.pick(free);
}

export function withShape(
  wall: Wall,
  flashing: Flashing,
  aspect: Aspect,
  change: Partial<FlashingShape>,
): Spoiled {
  const { shape } = flashing;
  if (shape === undefined) throw new NoRoom('the flashing has no shape');
  const changed = { ...flashing, shape: { ...shape, ...change } };
  return {
    wall: { ...wall, flashings: wall.flashings.map((each) => (each === flashing ? changed : each)) },
    taken: flashingSpot(wall, flashing, aspect),
  };
}
