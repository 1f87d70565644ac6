/** A name or title as it was typed, with single spaces and without signs that cannot be seen: some turn the letters behind them round. */
export function oneLine(typed: string): string {
  return typed
    .normalize('NFC')
    .replaceAll(/[\p{C}\s]+/gu, ' ')
    .trim();
}
