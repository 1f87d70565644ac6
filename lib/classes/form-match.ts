import type { Brief } from '../generate/brief';

/** A form as the match is judged on it: for each wall its declared difficulty and the families of its faults. */
export interface SeenForm {
  /** Whose it is, for the page. */
  readonly name: string;
  readonly walls: readonly {
    readonly difficulty: Brief['difficulty'];
    readonly families: readonly string[];
  }[];
}

export interface MatchRow {
  readonly name: string;
  readonly walls: number;
  /** Sum of the declared difficulties. */
  readonly difficulty: number;
  readonly sound: number;
  readonly faults: number;
  /** Faults by family, in the order of `families`. */
  readonly byFamily: readonly number[];
  /** True where every count is that of the first form. */
  readonly alike: boolean;
}

export interface Match {
  readonly families: readonly string[];
  readonly rows: readonly MatchRow[];
  readonly alike: boolean;
}

/** How far the forms of a set work are alike, counted from the walls themselves. */
export function matchOf(forms: readonly SeenForm[]): Match {
  const all = forms.flatMap(({ walls }) => walls.flatMap(({ families }) => families));
  const families = [...new Set(all)].sort();
  const counted = forms.map((form) => countsOf(form, families));
  const rows = counted.map((row) => ({ ...row, alike: sameCounts(row, counted[0] ?? row) }));
  return { families, rows, alike: rows.every(({ alike }) => alike) };
}

function countsOf({ name, walls }: SeenForm, families: readonly string[]): Omit<MatchRow, 'alike'> {
  const faults = walls.flatMap((wall) => wall.families);
  return {
    name,
    walls: walls.length,
    difficulty: walls.reduce((sum, wall) => sum + wall.difficulty, 0),
    sound: walls.filter((wall) => wall.families.length === 0).length,
    faults: faults.length,
    byFamily: families.map((family) => faults.filter((each) => each === family).length),
  };
}

function sameCounts(a: Omit<MatchRow, 'alike'>, b: Omit<MatchRow, 'alike'>): boolean {
  return (
    a.walls === b.walls &&
    a.difficulty === b.difficulty &&
    a.sound === b.sound &&
    a.byFamily.every((count, index) => count === b.byFamily[index])
  );
}
