/**
 * The bare places among covered cells, which hang together by edges: cells in the greatest, and whether any touches no edge of the sheet.
 * Cells run row by row.
 */
export function barePlaces(covered: readonly boolean[], columns: number, rows: number) {
  const seen = [...covered];
  let most = 0;
  let isShutIn = false;
  for (let start = 0; start < seen.length; start++) {
    if (seen[start]) continue;
    seen[start] = true;
    const patch = [start];
    let touchesEdge = false;
    for (let next = 0; next < patch.length; next++) {
      const place = patch[next] ?? 0;
      const column = place % columns;
      const row = (place - column) / columns;
      touchesEdge ||= column === 0 || column === columns - 1 || row === 0 || row === rows - 1;
      for (const [dx, dy] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const toColumn = column + dx;
        const toRow = row + dy;
        if (toColumn < 0 || toColumn >= columns || toRow < 0 || toRow >= rows) continue;
        const to = toRow * columns + toColumn;
        if (seen[to]) continue;
        seen[to] = true;
        patch.push(to);
      }
    }
    most = Math.max(most, patch.length);
    isShutIn ||= !touchesEdge;
  }
  return { most, isShutIn };
}
