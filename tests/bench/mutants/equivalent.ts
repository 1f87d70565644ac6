import type { Mutant } from './slips';

/** Slips that change nothing anybody can see: `file`, the line as it stands and the change, and why. */
const EQUIVALENT: readonly (readonly [file: string, was: string, change: string, why: string])[] = [
  [
    'lib/marking/log-and-exp.ts',
    'const LN2 = LN2_HIGH + LN2_LOW;',
    '+ → -',
    'it only says how often a power is doubled; one doubling more or less leaves the series as near as before',
  ],
  [
    'lib/views/behind/tie-spacing.ts',
    '(best, other) => (best && far(best) < far(other) ? best : other),',
    '< → <=',
    'it chooses between two ties at one height of one column, which give the same dimension',
  ],
];

/** Why no test can notice this mutant; null where one should. */
export function whyEquivalent(mutant: Mutant): string | null {
  const row = EQUIVALENT.find(
    ([file, was, change]) => file === mutant.file && was === mutant.was && change === mutant.change,
  );
  return row?.[3] ?? null;
}
