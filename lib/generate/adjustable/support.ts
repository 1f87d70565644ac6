import { boundAt, overhangBound } from '../../limits/bound';
import { limitsUnder } from '../../limits/limits';
import { overhangMarksOf } from '../../trade/overhang';
import { snap } from '../../units';
import type { Support, Wall } from '../../wall/model';
import { replaceSupport } from '../faults/support/support-changes';
import { type Departure, twice } from './departure';

const HALF = 0.5;
const TAPE = 1;

/** What carries the wall. */
export const SUPPORT_DEPARTURES: readonly Departure[] = [
  {
    id: 'overhang',
    family: 'Support',
    name: 'Overhang past the ledge',
    checks: ['overhang-too-far'],
    unit: 'mm',
    limit: 'overhang-share',
    fit: (wall, _limit, _places, rules) => {
      const ledge = supportOf(wall, 'ledge');
      const { depth } = wall.family;
      const bound = overhangBound(limitsUnder(rules), depth);
      if (ledge === null) return null;
      const { tipping } = overhangMarksOf(depth);
      return {
        at: ledge.id,
        sound: -ledge.front,
        most: twice(bound, -ledge.front, HALF),
        step: HALF,
        change: (now, value) =>
          moved(now, ledge.id, (support) => ({
            ...support,
            front: -snap(value),
            back: support.back - support.front - snap(value),
          })),
        refuse: (value) =>
          value >= tipping
            ? 'With half of each unit or more past the edge, the bottom course tips off its ledge.'
            : null,
      };
    },
  },
  {
    id: 'bearing',
    family: 'Support',
    name: 'Bearing of the lintel, each end',
    checks: ['short-lintel-bearing'],
    unit: 'mm',
    limit: 'lintel-bearing',
    fit: (wall, limit) => {
      const lintel = supportOf(wall, 'lintel');
      const opening = wall.openings.find(({ id }) => id === lintel?.opening);
      if (lintel === null || opening === undefined) return null;
      const sound = Math.min(opening.x - lintel.fromX, lintel.toX - opening.x - opening.width);
      return {
        at: lintel.id,
        sound,
        most: twice(boundAt(limit, { span: opening.width }), sound, TAPE),
        step: TAPE,
        change: (now, value) =>
          moved(now, lintel.id, (support) => ({
            ...support,
            fromX: opening.x - snap(value),
            toX: opening.x + opening.width + snap(value),
          })),
        refuse: (value) =>
          value <= 0
            ? 'With nothing under its ends, the lintel drops, and the bricks above it drop with it.'
            : null,
      };
    },
  },
];

function supportOf({ supports }: Wall, kind: Support['kind']): Support | null {
  return supports.find((support) => support.kind === kind && support.panel === 'A') ?? null;
}

function moved(wall: Wall, id: string, change: (support: Support) => Support): Wall {
  const support = wall.supports.find((each) => each.id === id);
  return support === undefined ? wall : replaceSupport(wall, support, [change(support)]);
}
