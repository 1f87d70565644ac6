import type { FaultChoice } from '../../lib/wall-page/fault-choices';
import type { NamedPart, PickedPart } from '../../lib/wall-page/nearby-parts';

/** Where a mark for a fault can go from the part picked: the part itself when it can have the fault, else what is nearby and can, nearest first. */
export function placesFor({ markedOn }: FaultChoice, picked: PickedPart): readonly NamedPart[] {
  if (markedOn.includes(picked.kind)) return [picked];
  return picked.nearby.filter(({ kind }) => markedOn.includes(kind));
}

/** The faults that the part picked can have, or something near it. */
export function faultsAt(faults: readonly FaultChoice[], picked: PickedPart): readonly FaultChoice[] {
  return faults.filter((fault) => placesFor(fault, picked).length > 0);
}
