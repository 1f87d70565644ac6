import type { CheckId } from '../../lib/inspect/finding';
import type { PartKind } from '../../lib/wall/parts';

/** A part of the wall with the name a reader sees. */
export interface NamedPart {
  readonly id: string;
  readonly kind: PartKind;
  readonly name: string;
}

export interface PickedPart extends NamedPart {
  /** What else can be marked at this place, nearest first: its joints, its course, its panel, what carries it. */
  readonly nearby: readonly NamedPart[];
}

export type Scope =
  | 'unit'
  | 'joint'
  | 'course'
  | 'panel'
  | 'corner'
  | 'edge'
  | 'support'
  | 'opening'
  | 'tie'
  | 'batch';

/** A fault as it can be chosen. */
export interface FaultChoice {
  readonly id: CheckId;
  readonly name: string;
  readonly looksLike: string;
  readonly whereToLook: string;
  readonly family: string;
  /** What it is marked on. */
  readonly scope: Scope;
  /** What is measured for it, and in which unit. */
  readonly asks: { readonly what: string; readonly unit: string };
}

export function scopeOf(kind: PartKind): Scope {
  return kind === 'bed' || kind === 'head' ? 'joint' : kind;
}

const ON_EVERY_WALL: readonly Scope[] = ['unit', 'joint', 'course'];

/** Where a mark for a fault can go from the part picked: the part itself when it is of the right sort, else what is nearby and is. None where every wall has such a part, but not near here. */
export function placesFor(fault: FaultChoice, picked: PickedPart): readonly NamedPart[] {
  if (scopeOf(picked.kind) === fault.scope) return [picked];
  const fitting = picked.nearby.filter(({ kind }) => scopeOf(kind) === fault.scope);
  return fitting.length > 0 || ON_EVERY_WALL.includes(fault.scope) ? fitting : [picked];
}
