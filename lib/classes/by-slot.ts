import { orderFor } from './forms';
import type { SetWorkSpec } from './set-work';

/**
 * Answers of first attempts with the slot in place of the place, both from 1. Where each learner has walls of their own, what is
 * comparable is the slot, the plan a wall was drawn to; each has the slots in an order of their own.
 */
export function bySlot<T extends { readonly learner: string; readonly place: number }>(
  { spec, secret }: { readonly spec: SetWorkSpec; readonly secret: string },
  answers: readonly T[],
): readonly T[] {
  const orders = new Map<string, readonly number[]>();
  return answers.map((answer) => {
    const { learner, place } = answer;
    const order = orders.get(learner) ?? orderFor(spec, secret, { learner, attempt: 1 });
    orders.set(learner, order);
    return { ...answer, place: (order[place - 1] ?? place - 1) + 1 };
  });
}
