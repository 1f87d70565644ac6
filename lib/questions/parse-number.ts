/** "67.8", "67,8", "2 3/4", "3/4": a number as typed, with a unit behind it or without. Undefined when it is none. */
export function parseNumber(text: string): number | undefined {
  const bare = text
    .trim()
    .replace(/\s*(mm|in|inches|"|″|%|m²|J|kN|m\/s)\.?$/i, '')
    .replace(',', '.');
  if (/^-?\d+(\.\d+)?$/.test(bare)) return Number(bare);
  const parts = /^(?:(\d+)[\s-]+)?(\d+)\/(\d+)$/.exec(bare);
  if (parts === null) return undefined;
  const [, whole = '0', top, bottom] = parts;
  const value = Number(whole) + Number(top) / Number(bottom);
  return Number.isFinite(value) ? value : undefined;
}
