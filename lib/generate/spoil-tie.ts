import type { Tie } from '../wall/model';
import { type Bench, NoRoom, type Spoiled } from './bench';

/** Changes one tie that no other fault has touched. */
export function spoilTie({ wall, chance, taken }: Bench, change: (tie: Tie) => Tie): Spoiled {
  const free = wall.ties.filter(({ id }) => !taken.some((spot) => spot.panel === id));
  if (free.length === 0) throw new NoRoom('no tie left');
  const tie = chance.pick(free);
  return {
    wall: { ...wall, ties: wall.ties.map((each) => (each === tie ? change(tie) : each)) },
    taken: { panel: tie.id, x: 0, y: 0, width: 0, height: 0 },
  };
}
