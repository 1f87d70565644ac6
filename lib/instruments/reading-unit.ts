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
