import { boundAt } from '../../../limits/bound';
import { type HeadId, headId } from '../../../wall/part-id';
import { type PerpendChain, perpendChainsOf } from '../../../wall/perpend-chains';
import type { Check } from '../../check';
import { headBox, joined } from '../../places';

/**
 * Each panel. A line of head joints runs up every second course in running bond, every third in third bond, or every second if no line runs up
 * every third: a head goes on in the next of those courses with the nearest head whose centre is within 12 mm of its own (the left on a tie).
 * Lines of at least four heads count. A head beside a soldier or a quoin is of no line. Drift: from the leftmost centre of a line to its rightmost.
 *
 * Measured: the greatest drift of the panel, against `perpend-line`. Parts: the head joints of every line beyond the limit, the worst line first.
 */
export const perpendDrift: Check = {
  id: 'perpend-drift',
  name: 'Perpends drift',
  alsoCalled:
    'wandering perps, perps out of line, perps out of plumb, head joints do not line up, cross joints wander, bond creeps',
  looksLike: 'Head joints that should stand above each other lean or wander to one side.',
  whereToLook: 'Front view. Let your eye run up the head joints of every other course.',
  measuredBy:
    'Hang a plumb line along head joints that should line up, and measure how far they spread sideways.',
  whyItMatters: 'It spoils the pattern. The courses run out of room at an opening and end in odd cuts.',
  putsRight:
    'The mason evens out the head joints before the next opening. The worst part is taken down and laid anew.',
  caughtAt: 'When bricks are set out dry, then with a plumb line each lift',
  mistakenFor: ['handmade-size-range'],
  markedOn: ['head'],
  hazard: 'looks',
  reach: 'in sight',
  lesson: 'setting-out-and-bond',
  asks: { what: 'How far a line of head joints wanders', unit: 'mm' },
  tooNear: 1,
  measure: ({ wall, panels }, limits, report) => {
    const limit = limits('perpend-line');
    if (limit === undefined) return;
    const bound = boundAt(limit, {});
    for (const survey of panels) {
      const chains = perpendChainsOf(survey, wall.bond);
      const [first] = chains;
      if (first === undefined) continue;
      const worst = chains.reduce((most, chain) => (chain.drift > most.drift ? chain : most), first);
      report({
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

function headsOf({ lefts }: PerpendChain): readonly HeadId[] {
  return lefts.flatMap(({ unit, right }) => (right === null ? [] : [headId(unit.id, right.unit.position)]));
}
