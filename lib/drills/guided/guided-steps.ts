import { hash32 } from '../hash';

/** A worked example fades: all is shown, half is left to the reader, nothing is shown. */
export const GUIDED_STEPS = [1, 2, 3] as const;
export type GuidedStep = (typeof GUIDED_STEPS)[number];

export function parseStep(text: unknown): GuidedStep {
  return GUIDED_STEPS.find((step) => String(step) === text) ?? 1;
}

/** Which half is left to the reader in the second step: the name of what is shown, or the place of what is named. */
export function halfOf(seed: number): 'name' | 'place' {
  return hash32(seed, 2) % 2 === 0 ? 'name' : 'place';
}

/** How many names there are to choose from, the right one among them. */
const NAMES = 4;

/**
 * The names to choose from for one fault, in an order that says nothing: the right one, then those it is easily taken for, then
 * others of its family, then any.
 */
export function namesFor<T extends string>(
  right: T,
  near: readonly T[],
  family: readonly T[],
  all: readonly T[],
  seed: number,
): readonly T[] {
  const chosen = [...new Set([right, ...near, ...shuffled(family, seed), ...shuffled(all, seed)])].slice(
    0,
    NAMES,
  );
  return shuffled(chosen, seed + 1);
}

function shuffled<T>(from: readonly T[], seed: number): readonly T[] {
  return from
    .map((each, place) => ({ each, order: hash32(seed, place) }))
    .sort((a, b) => a.order - b.order)
    .map(({ each }) => each);
}
