import type { CheckId } from '../../lib/inspect/finding';
import type { PartKind } from '../../lib/wall/part-id';

/** A part of the wall with the name a reader sees. */
export interface NamedPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly name: string;
}

export interface PickedPart extends NamedPart {
  /** What else can be marked from this place, nearest first: its joints, its course, its panel, what carries it. */
  readonly nearby: readonly NamedPart[];
}

/** A fault as it can be chosen. */
export interface FaultChoice {
  readonly id: CheckId;
  readonly name: string;
  readonly looksLike: string;
  readonly whereToLook: string;
  readonly family: string;
  /** The kinds of part it is marked on. */
  readonly markedOn: readonly PartKind[];
  /** What is measured for it, and in which unit. */
  readonly asks: { readonly what: string; readonly unit: string };
}

/** Where a mark for a fault can go from the part picked: the part itself when it can have the fault, else what is nearby and can, nearest first. */
export function placesFor({ markedOn }: FaultChoice, picked: PickedPart): readonly NamedPart[] {
  if (markedOn.includes(picked.kind)) return [picked];
  return picked.nearby.filter(({ kind }) => markedOn.includes(kind));
}

/** The faults that the part picked can have, or something near it. */
export function faultsAt(faults: readonly FaultChoice[], picked: PickedPart): readonly FaultChoice[] {
  return faults.filter((fault) => placesFor(fault, picked).length > 0);
}
