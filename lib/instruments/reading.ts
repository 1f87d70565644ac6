import type { InstrumentId, ReadingUnit } from './instrument';

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
