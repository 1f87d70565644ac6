import type { Tie } from '../wall/model';

/** Names ties afresh by course and place, so that a missing one leaves no gap in the numbers to give it away. */
export function renumbered(ties: readonly Tie[]): readonly Tie[] {
  const count = new Map<string, number>();
  return ties.map((tie) => {
    const row = `${tie.panel}-tie${tie.course}`;
    const place = (count.get(row) ?? 0) + 1;
    count.set(row, place);
    return { ...tie, id: `${row}.${place}` };
  });
}
