/** A wall clock's reading as a browser's date field sends it, like 2026-11-25T09:30. */
const READING = /^(\d{4})-(\d{2})-(\d{2})T(\d{2}):(\d{2})$/;

export function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}

/**
 * When clocks in `zone` show `reading`, ms; undefined for what is no reading. In the hour that comes twice in autumn the first one;
 * in the hour left out in spring an hour on.
 */
export function timeOf(reading: string, zone: string): number | undefined {
  const parts = READING.exec(reading)?.slice(1).map(Number);
  if (!parts) return undefined;
  const [year = 0, month = 1, day = 1, hour = 0, minute = 0] = parts;
  const asUtc = Date.UTC(year, month - 1, day, hour, minute);
  if (readingOf(asUtc, 'UTC') !== reading) return undefined;
  // The offset a day before and a day after: where they differ the clocks change in between.
  const day_ms = 86_400_000;
  const times = [asUtc - day_ms, asUtc + day_ms].map((near) => asUtc - offsetAt(near, zone));
  return times.sort((a, b) => a - b).find((time) => readingOf(time, zone) === reading) ?? times[1];
}

/** What clocks in `zone` show at a time, for a date field. */
export function readingOf(at: number, zone: string): string {
  const parts = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(at);
  const part = (type: string) => parts.find((each) => each.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}`;
}

/** How far clocks in `zone` are ahead of UTC at a time, ms. */
function offsetAt(at: number, zone: string): number {
  const whole = Math.floor(at / 60_000) * 60_000;
  return Date.parse(`${readingOf(whole, zone)}Z`) - whole;
}
