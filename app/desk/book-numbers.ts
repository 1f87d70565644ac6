import type { ShareLimits } from '../../lib/marking/wilson';

/** 0.724 -> '72'. Scores are in percent throughout the mark book, and the heads of the columns say so. */
export function percentText(share: number): string {
  return String(Math.round(share * 100));
}

/** Standard error of a score: '±9'. */
export function errorText(error: number): string {
  return `±${Math.max(1, Math.round(error * 100))}`;
}

/** '8 of 10, 80 % (49 to 94)': the limits are those of 95 %. */
export function shareText(count: number, total: number, { share, low, high }: ShareLimits): string {
  return `${count} of ${total}, ${percentText(share)} % (${percentText(low)} to ${percentText(high)})`;
}

/** With a true minus sign. */
export function signedText(value: number, digits: number): string {
  return value.toFixed(digits).replace('-', '−');
}

export function times(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
