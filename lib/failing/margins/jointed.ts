import type { Mm } from '../../units';
import { topLeft, topRight } from '../../wall/cut';
import type { Unit } from '../../wall/model';
import type { Placed } from '../../wall/survey';
import type { Contact, WallState } from '../state/model';
import { moveOf } from '../state/moves';
import type { Hold } from './hold';
import { faceOf, weightOf } from './loads';
import { FLEXURAL_BOND, FRICTION, SHEAR_BOND, SUCTION, TENSION_BOND } from './strengths';

/** What touches one unit, from whichever side it is named. */
export interface Touching {
  readonly below: readonly Contact[];
  readonly above: readonly Contact[];
  readonly beside: readonly Contact[];
  readonly ties: readonly Contact[];
}

/** How a unit in beds of mortar is held, each way in which it can come away. `load`: what lies on it, N. */
export function jointedHolds(
  placed: Placed,
  { below, above, beside, ties }: Touching,
  load: number,
  state: WallState,
): readonly Hold[] {
  const { unit } = placed;
  const resting = restOf(placed, state);
  const weight = weightOf(unit);
  const holds: Hold[] = [pulled(unit, load, [...below, ...above, ...beside], resting.length > 0, ties)];
  if (resting.length === 0 || !isUnderMiddle(unit, resting)) {
    holds.push({
      mode: 'hangs in its joints',
      kind: 'gravity',
      resistance: SHEAR_BOND * soundArea(beside) + TENSION_BOND * soundArea(above),
      demand: weight,
      unit: 'N',
    });
  } else {
    holds.push(onItsBed(placed, below, load, state, resting));
  }
  return holds;
}

/** What still stands under a unit: from, to, and how far back its bearing reaches from the unit's own back, mm. */
interface Rest {
  readonly from: Mm;
  readonly to: Mm;
  readonly deep: Mm;
}

function restOf({ unit, below, support }: Placed, state: WallState): readonly Rest[] {
  const out = moveOf(state, unit, unit.x).w;
  const rests: Rest[] = below.flatMap((lower) => {
    if (state.missing.has(lower.unit.id)) return [];
    const under = moveOf(state, lower.unit, lower.unit.x).w;
    const front = Math.min(unit.set + out, lower.unit.set + under);
    const back = unit.set + out - unit.depth;
    return [
      {
        from: Math.max(unit.x, topLeft(lower.unit)),
        to: Math.min(unit.x + unit.length, topRight(lower.unit)),
        deep: front - back,
      },
    ];
  });
  if (support !== null) {
    const back = unit.set + out - unit.depth;
    rests.push({
      from: Math.max(unit.x, support.fromX),
      to: Math.min(unit.x + unit.length, support.toX),
      deep: Math.min(unit.set + out, support.front) - back,
    });
  }
  return rests.filter(({ from, to, deep }) => to > from && deep > 0);
}

/** Whether its weight falls between the ends of what it rests on. */
function isUnderMiddle({ x, length }: Unit, rests: readonly Rest[]): boolean {
  const middle = x + length / 2;
  return rests.some(({ from }) => from <= middle) && rests.some(({ to }) => to >= middle);
}

/**
 * Tipping forward over the front edge of its bearing. While the bearing reaches past the middle of the depth, weight and load hold it back
 * against the suction on its face, at half of its height; where it does not, they tip it themselves, and the bond of the bed alone holds.
 */
function onItsBed(
  { unit }: Placed,
  below: readonly Contact[],
  load: number,
  state: WallState,
  rests: readonly Rest[],
): Hold {
  const deep = Math.min(unit.depth, Math.max(...rests.map((rest) => rest.deep)));
  const leans = (moveOf(state, unit, unit.x).lean / 1000) * (unit.height / 2);
  const lever = deep - unit.depth / 2 - Math.max(0, leans);
  const down = weightOf(unit) + load;
  const bond = (FLEXURAL_BOND * soundArea(below) * deep) / 6;
  const suction = SUCTION * faceOf(unit) * (unit.height / 2);
  return {
    mode: 'tips off its bed',
    kind: lever > 0 ? 'wind' : 'gravity',
    resistance: bond + Math.max(0, lever) * down,
    demand: suction + Math.max(0, -lever) * down,
    unit: 'N·mm',
  };
}

/** Drawn out by suction: friction under it and under what lies on it, and whatever bond it has. */
function pulled(
  unit: Unit,
  load: number,
  joints: readonly Contact[],
  rests: boolean,
  ties: readonly Contact[],
): Hold {
  const friction = rests ? FRICTION * (2 * load + weightOf(unit)) : 0;
  return {
    mode: 'drawn out by suction',
    kind: 'wind',
    resistance: friction + SHEAR_BOND * (soundArea(joints) + soundArea(ties)),
    demand: SUCTION * faceOf(unit),
    unit: 'N',
  };
}

/** Area that is still bonded, mm². */
export function soundArea(contacts: readonly Contact[]): number {
  return contacts.reduce((sum, { state, area, sound }) => sum + (state === 'bonded' ? area * sound : 0), 0);
}
