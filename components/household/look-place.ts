import { STOPS, type StopId } from '../../lib/household/stops';

export type Step = StopId | 'note';

/** The steps of a look round, in order. */
export const STEPS: readonly Step[] = [...STOPS.map(({ id }) => id), 'note'];

/** Where a reader is: an open look at one of its steps. */
export interface LookPlace {
  readonly id: string;
  readonly step: Step;
}

/** "#/k3x9/base": kept in the address, so that going back and a reload lead to the same step. */
export function hashOf({ id, step }: LookPlace): string {
  return `#/${id}/${step}`;
}

export function placeOfHash(hash: string): LookPlace | null {
  const [, id = '', last] = /^#\/(\w+)\/([\w-]+)$/.exec(hash) ?? [];
  const step = STEPS.find((each) => each === last);
  return step === undefined ? null : { id, step };
}
