import type { WallAnswer } from './wall-answer';

/** What became of all faults of one kind. */
export interface ConfusionRow {
  readonly fault: string;
  readonly met: number;
  /** How often each name was given where this fault was found, its own among them. */
  readonly named: ReadonlyMap<string, number>;
  readonly notFound: number;
}

export interface Confusion {
  /** One row for each fault met, in alphabetical order. */
  readonly rows: readonly ConfusionRow[];
  /** Names given where nothing was wrong, with how often. */
  readonly nothingThere: ReadonlyMap<string, number>;
}

/** One fault taken for another. */
export interface Swap {
  readonly fault: string;
  readonly saidToBe: string;
  readonly times: number;
  /** How often the fault was met. */
  readonly met: number;
}

/** The table "fault there against fault named" of many answers. */
export function confusionOf(answers: readonly WallAnswer[]): Confusion {
  const faults = answers.flatMap((answer) => answer.faults);
  const met = [...new Set(faults.map(({ fault }) => fault))].sort();
  return {
    rows: met.map((fault) => {
      const own = faults.filter((answer) => answer.fault === fault);
      return {
        fault,
        met: own.length,
        named: countsOf(own.flatMap(({ named }) => named ?? [])),
        notFound: own.filter(({ found }) => !found).length,
      };
    }),
    nothingThere: countsOf(answers.flatMap(({ falseMarks }) => falseMarks.map(({ fault }) => fault))),
  };
}

/** The commonest swaps, most first; of equal ones the one with the greater share, then by name. */
export function swapsOf({ rows }: Confusion, most: number): readonly Swap[] {
  return rows
    .flatMap(({ fault, met, named }) =>
      [...named].flatMap(([saidToBe, times]) => (saidToBe === fault ? [] : { fault, saidToBe, times, met })),
    )
    .sort(
      (a, b) =>
        b.times - a.times ||
        b.times / b.met - a.times / a.met ||
        (a.fault + a.saidToBe < b.fault + b.saidToBe ? -1 : 1),
    )
    .slice(0, most);
}

/** "Thin joint" was called "open head joint" 4 times of 9. */
export function swapWords({ fault, saidToBe, times, met }: Swap, nameOf: (fault: string) => string): string {
  const often = times === 1 ? 'once' : `${times} times`;
  return `“${nameOf(fault)}” was called “${nameOf(saidToBe)}” ${often}. It was met ${met === 1 ? 'once' : `${met} times`}.`;
}

export function countsOf(names: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
}
