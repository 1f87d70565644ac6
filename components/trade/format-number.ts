/** A number to so many places behind the point, without idle zeros; a true minus sign. */
export function formatNumber(value: number, digits = 1): string {
  const text = String(Number(Math.abs(value).toFixed(digits)));
  return value < 0 && text !== '0' ? `−${text}` : text;
}
