/** A moment in UTC, ISO 8601. */
export function isoOf(ms: number): string {
  return new Date(ms).toISOString();
}
