import { boundAt } from '../../limits/bound';
import { limitOf } from '../../limits/limits';
import { headId } from '../../wall/model';
import { type PerpendChain, perpendChainsOf } from '../../wall/perpend-chains';
import { headBox, joined } from '../places';
import type { Check } from '../sight';

/** Gathered drift of the worst line of head joints in a panel. */
export const perpendDrift: Check = {
  id: 'perpend-drift',
  measure: ({ wall, panels }, rules, see) => {
    const limit = limitOf(rules, 'perpend-line');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const survey of panels) {
      const chains = perpendChainsOf(survey, wall.bond === 'running' ? 2 : 3);
      const [first] = chains;
      if (first === undefined) continue;
      const worst = chains.reduce((most, chain) => (chain.drift > most.drift ? chain : most), first);
      see({
        limit,
        end: 'at most',
        measured: worst.drift,
        bound,
        at: survey.panel.id,
        place: () => {
          const beyond = chains.filter((chain) => chain !== worst && chain.drift > bound);
          const shown = [worst, ...beyond.sort((a, b) => b.drift - a.drift)];
          return {
            parts: shown.flatMap(headsOf),
            region: joined(
              chains.filter(({ drift }) => drift === worst.drift).flatMap(({ lefts }) => lefts.map(headBox)),
            ),
          };
        },
      });
    }
  },
};

function headsOf({ lefts }: PerpendChain): readonly string[] {
  return lefts.flatMap(({ unit, right }) => (right === null ? [] : [headId(unit.id, right.unit.position)]));
}
