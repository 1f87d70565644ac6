/** A form as the match is judged on it: for each wall how far its faults are beyond their limits, as in WallProbe. */
export interface SeenForm {
  /** Whose it is, for the page. */
  readonly name: string;
  readonly walls: readonly (readonly number[])[];
}

export interface MatchRow {
  readonly name: string;
  readonly walls: number;
  readonly sound: number;
  readonly faults: number;
  /** Mean over all faults of the form; null without one. */
  readonly severity: number | null;
}

/** How far the forms of a set work are alike, counted from the walls themselves. */
export function matchOf(forms: readonly SeenForm[]): readonly MatchRow[] {
  return forms.map(({ name, walls }) => {
    const faults = walls.flat();
    return {
      name,
      walls: walls.length,
      sound: walls.filter((wall) => wall.length === 0).length,
      faults: faults.length,
      severity: faults.length === 0 ? null : faults.reduce((sum, each) => sum + each, 0) / faults.length,
    };
  });
}
