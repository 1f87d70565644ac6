import { shift } from '../draft';
import { between, type Mechanism, mustStand, shareAfter } from '../mechanism';
import { pushedAlong } from '../parting/field';
import { tearApart } from '../parting/part';
import { weakestPath } from '../parting/weakest-path';

/** Drying of concrete units in a year, by their aggregate: 0.032 to 0.116 % (LABC Warranty, technical guidance). */
export const SHRINKAGE: readonly [least: number, most: number] = [0.00032, 0.00116];

/** Concrete units dry and shorten; held at both ends, the wall parts in the middle of its length, as wide at its foot as at its head. */
export const DRYING_SHRINKAGE: Mechanism = {
  name: 'drying-shrinkage',
  what: 'units of concrete dry out and shorten, and the wall parts between its held ends',
  showsAfter: 1,
  lacks: mustStand,
  act: ({ survey, main, draft, chance, years }) => {
    draft.stuff = 'concrete';
    const { length } = main.panel;
    const gap = between(chance, SHRINKAGE[0] * 1.3, SHRINKAGE[1]) * length * shareAfter(years, 0.5);
    const window = main.openings[0];
    const start =
      window === undefined
        ? length * between(chance, 0.4, 0.6)
        : window.x + window.width * between(chance, 0.1, 0.9);
    const left = pushedAlong(-gap / 2);
    const right = pushedAlong(gap / 2);
    const isDoor = window?.kind === 'door';
    const from = isDoor ? window.x - 110 : start;
    const tear = { left, right, unitStrength: between(chance, 1, 4), bond: between(chance, 0.5, 1) };
    const parting = weakestPath(main, survey.wall.joint, from, tear);
    if (parting === null) return;
    tearApart(draft, main, parting, left, right);
    // Each half is drawn toward its own held end: nothing there, half of the gap at the crack.
    for (const { unit } of main.placed) {
      const pass = parting.passes[unit.course - 1];
      if (pass === null || pass === undefined) continue;
      const middle = unit.x + unit.length / 2;
      const split = draft.splits.get(unit.id);
      if (split !== undefined) continue;
      const along = middle < pass.x ? middle / pass.x : (length - middle) / (length - pass.x);
      const by = (gap / 2) * (1 - along);
      shift(draft, unit.id, { u: middle < pass.x ? by : -by });
    }
  },
};
