import { TOPIC_TITLES, topicOf } from '../generate/topics';
import { CATALOGUE } from '../inspect/catalogue';
import { CHECKS, type CheckId } from '../inspect/finding';
import type { PartKind } from '../wall/part-id';

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

/** All faults as they can be chosen: every one of them, whatever the wall is about. */
export const FAULT_CHOICES: readonly FaultChoice[] = CHECKS.map((id) => {
  const { name, looksLike, whereToLook, markedOn, asks } = CATALOGUE[id];
  return {
    id,
    name,
    looksLike,
    whereToLook,
    markedOn,
    family: TOPIC_TITLES[topicOf(id)],
    asks,
  };
});

export function faultName(fault: string): string {
  return FAULT_CHOICES.find(({ id }) => id === fault)?.name ?? fault;
}

/** Address of the passage of its lesson on a fault. */
export function passageOf(check: CheckId): string {
  return `/lessons/${CATALOGUE[check].lesson}#fault-${check}`;
}
