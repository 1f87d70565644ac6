import { fallEnergy } from '../../trade/falling';
import type { UnitId } from '../../wall/part-id';
import type { FailingWall, Leaves, WallState } from '../state/model';
import { massOf } from './loads';
import { type Margin, marginsOf } from './margins';

/** Below this many times the least margin, two units are too near to say which comes first: bond scatters by 30 % or so (Gooch and others 2023). */
export const TOO_NEAR = 2;

/** Units of which none can be told to come first, the one that lands hardest leading. */
export interface Turn {
  readonly parts: readonly UnitId[];
  /** The least of their margins. */
  readonly margin: number;
  /** Energy on landing of the first, J. */
  readonly energy: number;
}

/** Who comes next, in turns: all whose margins are within a factor of two of the least left. */
export function turnsOf({ survey }: FailingWall, margins: readonly Margin[]): readonly Turn[] {
  const energies = new Map(
    survey.panels.flatMap(({ placed }) =>
      placed.map(({ unit }) => [unit.id, fallEnergy(massOf(unit), Math.max(0, unit.y))] as const),
    ),
  );
  const energyOf = (part: UnitId) => energies.get(part) ?? 0;
  const rising = [...margins].sort(
    (a, b) => a.margin - b.margin || energyOf(b.part) - energyOf(a.part) || (a.part < b.part ? -1 : 1),
  );
  const turns: Turn[] = [];
  let from = 0;
  while (from < rising.length) {
    const least = rising[from]?.margin ?? 0;
    let to = from + 1;
    while (to < rising.length && (rising[to]?.margin ?? 0) <= TOO_NEAR * least) to += 1;
    const parts = rising.slice(from, to).map(({ part }) => part);
    parts.sort((a, b) => energyOf(b) - energyOf(a));
    turns.push({ parts, margin: least, energy: energyOf(parts[0] as UnitId) });
    from = to;
  }
  return turns;
}

/** Whether "which comes next" has one answer. */
export function hasOneNext([first]: readonly Turn[]): boolean {
  return first?.parts.length === 1;
}

/** The wall without a unit: what touched it touches nothing now. */
export function without({ survey, state }: FailingWall, part: UnitId): FailingWall {
  const missing = new Map<UnitId, Leaves>(state.missing);
  missing.set(part, survey.wall.masonry === 'adhered' ? 'mortar-on-wall' : 'bed-print');
  const contacts = state.contacts.map((contact) =>
    contact.unit === part || contact.other === part
      ? { ...contact, state: 'gone' as const, sound: 0 }
      : contact,
  );
  return { survey, state: { ...state, contacts, missing } satisfies WallState };
}

/** Lets go of the unit that is held least, so many times over, and works out the margins anew after each. */
export function letGo(
  failing: FailingWall,
  times: number,
): { readonly failing: FailingWall; readonly lost: readonly Margin[] } {
  let left = failing;
  const lost: Margin[] = [];
  for (let time = 0; time < times; time++) {
    const margins = marginsOf(left);
    const part = turnsOf(left, margins)[0]?.parts[0];
    const margin = margins.find((each) => each.part === part);
    if (part === undefined || margin === undefined) break;
    lost.push(margin);
    left = without(left, part);
  }
  return { failing: left, lost };
}
