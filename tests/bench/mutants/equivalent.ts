import type { Mutant } from './slips';

/** Slips that change nothing anybody can see: `file`, the line as it stands and the change, and why. */
const EQUIVALENT: readonly (readonly [file: string, was: string, change: string, why: string])[] = [];

/** Why no test can notice this mutant; null where one should. */
export function whyEquivalent(mutant: Mutant): string | null {
  const row = EQUIVALENT.find(
    ([file, was, change]) => file === mutant.file && was === mutant.was && change === mutant.change,
  );
  return row?.[3] ?? null;
}
