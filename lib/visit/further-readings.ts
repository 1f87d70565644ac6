/** What one would read next to tell causes apart: those in one set would read alike, and all that are in none too. Common practice. */
export const FURTHER_READINGS = {
  'gauge-for-a-year': [['tree-drying'], ['clay-expansion', 'bowing']],
  'under-the-cap': [['water-at-cap']],
  'behind-a-unit': [['peeling-back'], ['missing-ties', 'rusting-ties']],
  'rust-at-a-tie': [['rusting-ties', 'rusting-lintel']],
  'level-of-a-course': [['corner-settlement', 'tree-drying'], ['sagging'], ['hogging']],
  'mortar-to-a-laboratory': [['sulphates'], ['salts'], ['weak-mortar']],
} as const satisfies Readonly<Record<string, readonly (readonly string[])[]>>;
export type FurtherReading = keyof typeof FURTHER_READINGS;

/** Whether a reading would come out differently for some of these causes than for the others. */
export function tellsApart(reading: FurtherReading, causes: readonly string[]): boolean {
  const sets: readonly (readonly string[])[] = FURTHER_READINGS[reading];
  return new Set(causes.map((cause) => sets.findIndex((set) => set.includes(cause)))).size > 1;
}
