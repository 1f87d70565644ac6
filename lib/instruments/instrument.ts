import type { PartKind } from '../wall/part-id';

export const INSTRUMENTS = [
  'tape',
  'joint-gauge',
  'spirit-level',
  'plumb-line',
  'mason-line',
  'straightedge',
  'square',
  'gauge-rod',
  'mirror',
  'probe',
  'tie-finder',
  'tap',
  'scratch',
  'thermometer',
] as const;
export type InstrumentId = (typeof INSTRUMENTS)[number];

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

/** An instrument: what it reads and how well. `resolution` and `error` are of its first quantity, in `unit`; 0 where it speaks in words. */
export interface Instrument {
  readonly id: InstrumentId;
  readonly name: string;
  /** What it tells, in one sentence. */
  readonly reads: string;
  /** The smallest step it shows. */
  readonly resolution: number;
  /** How far a reading may be from the truth, either way. */
  readonly error: number;
  readonly unit: ReadingUnit;
  /** Where the error is from. Nobody fails by it: it only says how near a reading has to come. */
  readonly source: 'common practice' | 'our proposal' | 'read off the object';
  /** How it lies when it is used badly. */
  readonly lies: string;
  /** Parts it can be held to, the likeliest first. */
  readonly on: readonly PartKind[];
  /** It also reads between two parts: first the one, then the other. */
  readonly between: readonly PartKind[];
}
