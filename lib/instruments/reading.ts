import type { InstrumentId } from './instrument';

/** Units of readings, in the words of the limits; '' for a reading in words only. */
export const READING_UNITS = [
  'mm',
  'mm²',
  '%',
  'minutes',
  'mm per 4 courses',
  'mm per m',
  'volumes',
  'there or not',
  '°C',
  '',
] as const;
export type ReadingUnit = (typeof READING_UNITS)[number];

/** One thing read off at a part. `value` null: the instrument says it in words only. */
export interface Reading {
  readonly instrument: InstrumentId;
  readonly part: string;
  /** What was read, in words a reader knows. One part, instrument and way of holding never gives the same `what` twice. */
  readonly what: string;
  readonly value: number | null;
  readonly unit: ReadingUnit;
  readonly words: string | null;
  /** How far the value may be from the truth, either way, in `unit`. */
  readonly error: number;
  /** True for thin metal: shown in hundredths. */
  readonly fine: boolean;
  /** True when the level was turned end for end. */
  readonly turned: boolean;
}
