import { formatMeasure } from '../../components/result/format-measure';
import type { FaultChoice } from '../../components/wall-page/part-facts';
import type { Mark } from '../../components/wall-page/practice-state';
import { TOPIC_FAULTS, TOPIC_TITLES, TOPICS, type Topic } from '../generate/topics';
import { CATALOGUE } from '../inspect/catalogue';
import { CHECKS, type CheckId } from '../inspect/finding';
import type { LengthSystem } from '../units';

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

/** The first topic that has the fault: its family. */
export function topicOf(fault: CheckId): Topic {
  return TOPICS.find((each) => TOPIC_FAULTS[each].includes(fault)) ?? 'mixed';
}

export function faultName(fault: string): string {
  return FAULT_CHOICES.find(({ id }) => id === fault)?.name ?? fault;
}

/** What a mark says beyond place, name and certainty: "9.5 mm · good practice · put right now". Empty when nothing. */
export function detailsText({ fault, reading, kind, act }: Mark, system: LengthSystem): string {
  const { unit } = CATALOGUE[fault].asks;
  const amount = reading === undefined ? undefined : formatMeasure(reading, unit, system);
  return [amount, kind, act].filter((each) => each !== undefined).join(' · ');
}

/** Address of the passage of its lesson on a fault. */
export function passageOf(check: CheckId): string {
  return `/lessons/${CATALOGUE[check].lesson}#fault-${check}`;
}
