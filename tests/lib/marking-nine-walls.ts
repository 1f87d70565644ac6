import type { RatedFault, RatedWall } from '../../lib/marking/rated-wall';

/** Nothing marked there. */
const NO = null;

const sound = (...falseRatings: readonly number[]): RatedWall => ({ faults: [], falseRatings });
const faulty = (
  falseRatings: readonly number[],
  ...faults: readonly (readonly [rating: number | null, weight: number])[]
): RatedWall => ({
  falseRatings,
  faults: faults.map(([rating, weight]): RatedFault => ({ rating, weight })),
});

/** Four sound and five faulty walls: the rows of D. P. Chakraborty's example "AFROC vs. wAFROC" (RJafroc FROC book). */
export const NINE_WALLS: readonly RatedWall[] = [
  sound(),
  sound(0.5),
  sound(0.7, 0.6),
  sound(-0.3),
  faulty([1.5], [0.9, 1]),
  faulty([], [-0.2, 1]),
  faulty([], [1.6, 0.1], [NO, 0.9]),
  faulty([], [3, 0.9], [2, 0.1]),
  faulty([], [1, 0.3], [2.5, 0.4], [1, 0.3]),
];
