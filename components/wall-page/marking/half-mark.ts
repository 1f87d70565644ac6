import type { LengthSystem } from '../../../lib/units';
import type { FaultChoice } from '../../../lib/wall-page/fault-choices';
import { parseReading, readingText } from '../reading-text';
import type { HalfMark, Mark } from '../work-state';
import { type MarkDetails, NO_DETAILS } from './mark-details';

/** 100 m in mm; a day has 1,440 minutes, and a share stops at 100 %. */
const MOST_READING = 100_000;

/** What the form starts from: nothing, or the mark it changes. */
export function halfFrom(
  before: Mark | undefined,
  faults: readonly FaultChoice[],
  system: LengthSystem,
): HalfMark {
  const details = detailsBefore(before, faults, system);
  return { words: '', fault: before?.fault ?? null, place: null, sure: before?.sure ?? 2, details, system };
}

/** The same with its reading in the other system of lengths. */
export function inLengths(half: HalfMark, fault: FaultChoice | undefined, system: LengthSystem): HalfMark {
  const { details } = half;
  const value = fault && parseReading(details.reading, fault.asks.unit, half.system);
  return fault === undefined || value === undefined
    ? { ...half, system }
    : { ...half, system, details: { ...details, reading: readingText(value, fault.asks.unit, system) } };
}

/** The mark that it makes of a fault on a part; or what is wrong with its reading, in a sentence. */
export function markFrom(
  { sure, details, system }: HalfMark,
  fault: FaultChoice,
  part: string,
): Mark | string {
  const reading = parseReading(details.reading, fault.asks.unit, system);
  if (details.reading.trim() !== '' && reading === undefined) {
    return `“How much?” takes a number, like ${system === 'inches' ? '3/8 or 1 1/2' : '12 or 9.5'}.`;
  }
  if (reading !== undefined && reading < 0) {
    return '“How much?” takes a number from 0 up. Leave the minus out.';
  }
  if (reading !== undefined && reading > MOST_READING) {
    return '“How much?” is more than any wall can have. Look at the unit behind the box.';
  }
  return {
    ...{ part, fault: fault.id, sure },
    ...(reading === undefined ? {} : { reading }),
    ...(details.kind === null ? {} : { kind: details.kind }),
    ...(details.act === null ? {} : { act: details.act }),
  };
}

function detailsBefore(
  before: Mark | undefined,
  faults: readonly FaultChoice[],
  system: LengthSystem,
): MarkDetails {
  const unit = faults.find(({ id }) => id === before?.fault)?.asks.unit;
  if (!before || unit === undefined) return NO_DETAILS;
  const { reading, kind = null, act = null } = before;
  const text = unit === 'there or not' ? String(reading ?? '') : undefined;
  return { reading: text ?? (reading === undefined ? '' : readingText(reading, unit, system)), kind, act };
}
